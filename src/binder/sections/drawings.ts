import { showStated } from '../../units/show.ts'
import type { Block, Section } from '../blocks.ts'
import { attachmentBlocks } from '../attachments.ts'
import { controllerCharts } from '../controller-charts.ts'
import { chartRows, drawingRecord } from '../drawing-record.ts'
import type { PageContext } from '../context.ts'
import { ownSheet } from '../plan-figure.ts'
import { recordDrawingBlocks } from '../record-drawing.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

/** The sheets of the record drawing, who holds them, and the charts of the controllers. */
export function drawingsSection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.closeout.drawings
  const sheets = site.closeout?.recordDrawings ?? []
  const list: Block =
    sheets.length === 0
      ? {
          kind: 'not-supplied',
          text: plan.drawing.sheet ? `${w.sheets}: ${words.binder.notSupplied}` : words.binder.notSupplied
        }
      : {
          kind: 'table',
          columns: [
            w.number,
            w.title,
            w.dated,
            w.revision,
            w.scale,
            w.signedBy,
            w.tolerance,
            w.transmittal,
            w.copies
          ].map(label => ({ label })),
          rows: sheets.map(one => [
            stated(one.number, true),
            orNotSupplied(one.title, words),
            orNotSupplied(one.dated, words, true),
            orNotSupplied(one.revision, words),
            orNotSupplied(one.scale, words),
            orNotSupplied(one.signedBy, words),
            one.surveyTolerance ? stated(`±${showStated(one.surveyTolerance)}`) : notSupplied(words),
            orNotSupplied(one.transmittal, words),
            one.copies.length === 0 ? notSupplied(words) : stated(one.copies.join('; '))
          ]),
          ...(plan.drawing.sheet
            ? { notes: [words.drawing.ownNote(ownSheet(context), sheets.map(one => one.number).join(', '))] }
            : {})
        }
  return {
    id: 'record-drawings',
    title: words.closeout.sections.drawings,
    newPage: false,
    notSupplied: sheets.length === 0 && plan.drawing.marks.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      list,
      ...drawingRecord(context),
      ...chartFacts(context),
      ...recordDrawingBlocks(context),
      ...attachmentBlocks(
        context,
        sheets.map(one => ({ ...one, title: [one.number, one.title].filter(Boolean).join(' ') }))
      ),
      ...controllerCharts(context)
    ]
  }
}

/** What is said of the charts; each stands on a sheet of its own after the drawing. */
function chartFacts(context: PageContext): Block[] {
  const { site, words } = context
  const w = words.closeout.drawings
  const charts = site.closeout?.charts
  return [
    { kind: 'heading', id: 'controller-charts', text: words.drawing.chart.section },
    { kind: 'paragraph', text: words.handover.drawings.chartNote, small: true },
    {
      kind: 'facts',
      rows: [
        {
          label: w.chartCopies,
          value: orNotSupplied(charts?.copies === undefined ? undefined : String(charts.copies), words)
        },
        { label: w.chartFixed, value: orNotSupplied(charts?.fixed, words) },
        { label: w.chartMaterial, value: orNotSupplied(charts?.material, words) },
        { label: w.chartApproved, value: orNotSupplied(charts?.approved, words, true) },
        ...chartRows(context)
      ]
    }
  ]
}
