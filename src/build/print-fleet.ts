import type { PageContext } from '../binder/context.ts'
import { makeChartsPage } from '../binder/make-charts.ts'
import { makeRestrictedSheet } from '../binder/make-restricted.ts'
import { renderPages } from '../render/eleventy.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { singleSheet } from '../render/label-sheets.ts'
import type { IsoDate } from '../units/date.ts'
import type { KeptFleet } from './kept-fleet.ts'
import type { Stage } from './output-stage.ts'
import type { DocumentToPrint, PrintReport } from './print-documents.ts'
import type { PrintWish } from './print-wish.ts'
import type { BuiltDigest, SiteDigest } from './site-digest.ts'
import { contextsOf } from './site-work.ts'

export interface PrintingWish {
  readonly on: IsoDate
  readonly print?: PrintWish
  readonly onPrinted?: (pdf: string, how: 'printed' | 'reused' | 'failed') => void
}

export interface Printing {
  readonly stage: Stage
  readonly fleet: KeptFleet
  readonly digests: readonly SiteDigest[]
  readonly wish: PrintingWish
}

export async function printAll(printing: Printing): Promise<PrintReport> {
  const { stage, fleet, digests, wish } = printing
  const { print, onPrinted, on } = wish
  const documents = digests.flatMap<DocumentToPrint>(({ id, built }) => {
    if (!built) return []
    const one = (name: string): DocumentToPrint => ({
      html: `office/${id}/${name}.html`,
      pdf: `print/${id}-${name}.pdf`,
      paper: built.paper,
      on
    })
    return [
      ...(print?.binders ? [one('binder')] : []),
      ...(print?.labels && hasTags(built) && built.labels.made > 0 ? [{ ...one('labels'), ...sheetOf(print) }] : []),
      ...(print?.charts && built.summary.counts.controllers > 0 ? [one('charts')] : []),
      ...(print?.restricted ? [one('restricted')] : [])
    ]
  })
  if (print?.restricted) await stageApart(printing, 'restricted', 'binder', makeRestrictedSheet)
  if (print?.charts) await stageApart(printing, 'charts', 'charts', makeChartsPage)
  // The browser's driver and the reader of PDFs are slow to read in; only a print needs them.
  const { printDocuments } = await import('./print-documents.ts')
  return printDocuments(stage, documents, {
    base: fleet.common.publicAddress,
    ...(onPrinted ? { onDone: onPrinted } : {})
  })
}

/** Labels that have a sheet each stand on neither A4 nor Letter. */
function sheetOf({ labelWish }: PrintWish): Pick<DocumentToPrint, 'sheetMm'> {
  return labelWish?.single ? { sheetMm: singleSheet(labelWish.size) } : {}
}

const hasTags = ({ features }: BuiltDigest): boolean => features.some(one => typeof one.properties['tag'] === 'string')

/** A print apart has a page only while it is asked for: the next build without the option takes it away again. */
async function stageApart(
  { stage, fleet, digests }: Printing,
  name: string,
  template: string,
  make: (context: PageContext) => object
): Promise<void> {
  const wanted = new Set(digests.filter(one => one.built).map(one => one.id))
  for (const unit of fleet.units.filter(one => wanted.has(one.sources.id))) {
    const plans = (await contextsOf(unit, fleet.common)).map<PagePlan>(context => ({
      path: `office/${context.site.id}/${name}.html`,
      template,
      data: make(context)
    }))
    const pages = await renderPages(plans, { stamp: fleet.common.mark })
    for (const { path, html } of pages) stage.write({ path, content: html })
  }
}
