import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { controllerCharts } from '../controller-charts.ts'

/** The charts that are kept at the controllers, a page each. */
export function chartsSection(context: PageContext): Section {
  const { words } = context
  const charts = controllerCharts(context)
  return {
    id: 'controller-charts',
    title: words.drawing.chart.section,
    newPage: true,
    notSupplied: charts.length === 0,
    blocks:
      charts.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
        : [{ kind: 'paragraph', text: words.drawing.chart.lead }, ...charts]
  }
}
