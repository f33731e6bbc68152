import type { PageContext } from './context.ts'
import { controllerCharts } from './controller-charts.ts'
import type { ChartBlock } from './sheet-blocks.ts'

/** The charts of a site as a print of their own, to be sealed and kept at the controllers. */
export interface ChartsPage {
  readonly language: string
  readonly paper: 'A4' | 'Letter'
  readonly title: string
  readonly subtitle: string
  readonly charts: readonly ChartBlock[]
}

export function makeChartsPage(context: PageContext): ChartsPage {
  const { site, words } = context
  return {
    language: words.language,
    paper: site.paper,
    title: site.title,
    subtitle: words.drawing.chart.document,
    charts: controllerCharts(context)
  }
}
