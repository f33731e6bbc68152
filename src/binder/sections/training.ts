import { showStated } from '../../units/show.ts'
import type { Block, Section } from '../blocks.ts'
import { attachmentBlocks } from '../attachments.ts'
import type { PageContext } from '../context.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

const SHEET_LINES = 8

/** Who was taught what, and a sheet for the next. */
export function trainingSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.closeout.training
  const trainings = site.closeout?.training ?? []
  const joined = (list: readonly string[]) => (list.length === 0 ? notSupplied(words) : stated(list.join('; ')))
  const table: Block =
    trainings.length === 0
      ? { kind: 'not-supplied', text: words.binder.notSupplied }
      : {
          kind: 'table',
          columns: [
            w.on,
            w.trainer,
            w.place,
            w.duration,
            w.attendees,
            w.topics,
            w.signed,
            words.handover.training.reviewer
          ].map(label => ({ label })),
          rows: trainings.map(one => [
            orNotSupplied(one.on, words, true),
            orNotSupplied(one.trainer, words),
            orNotSupplied(one.place, words),
            one.duration ? stated(showStated(one.duration)) : notSupplied(words),
            joined(one.attendees),
            joined(one.topics),
            one.signed === undefined ? notSupplied(words) : stated(one.signed ? words.closeout.yes : words.closeout.no),
            orNotSupplied(one.reviewer, words)
          ])
        }
  return {
    id: 'training',
    title: words.closeout.sections.training,
    newPage: false,
    notSupplied: trainings.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      table,
      {
        kind: 'table',
        caption: w.sheet,
        columns: w.sheetColumns.map(label => ({ label })),
        rows: [],
        blankRows: SHEET_LINES
      },
      ...attachmentBlocks(
        context,
        trainings.map(one => ({ ...one, title: [words.closeout.sections.training, one.on].filter(Boolean).join(', ') }))
      )
    ]
  }
}
