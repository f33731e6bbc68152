import type { TestReport } from '../../model/closeout.ts'
import { showStated } from '../../units/show.ts'
import type { Words } from '../../words/words.ts'
import type { Block, Section, Value } from '../blocks.ts'
import { attachmentBlocks } from '../attachments.ts'
import type { PageContext } from '../context.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

/** Empty lines of each sheet that is filled in by hand. */
const SHEET_LINES = 6

/** What was tested before acceptance, and sheets to test again by. */
export function testReportsSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.closeout.tests
  const tests = site.closeout?.tests ?? []
  const table: Block =
    tests.length === 0
      ? { kind: 'not-supplied', text: words.binder.notSupplied }
      : {
          kind: 'table',
          columns: [w.kind, w.on, w.of, w.by, w.witness, w.conditions, w.result].map(label => ({ label })),
          rows: tests.map(test => row(test, words))
        }
  const sheets = [
    [w.pressureSheet, w.pressureColumns],
    [w.readingSheet, w.readingColumns],
    [w.inspectionSheet, w.inspectionColumns]
  ] as const
  return {
    id: 'test-reports',
    title: words.closeout.sections.tests,
    newPage: true,
    notSupplied: tests.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      table,
      ...sheets.map<Block>(([caption, columns]) => ({
        kind: 'table',
        caption,
        columns: columns.map(label => ({ label })),
        rows: [],
        blankRows: SHEET_LINES
      })),
      ...attachmentBlocks(
        context,
        tests.map(test => ({ ...test, title: [w.kinds[test.kind], test.of].filter(Boolean).join(', ') }))
      )
    ]
  }
}

function row(test: TestReport, words: Words): Value[] {
  const w = words.closeout.tests
  const by = [test.by, test.company].filter(Boolean).join(', ')
  return [
    stated(w.kinds[test.kind]),
    orNotSupplied(test.on, words, true),
    stated(test.of ?? '–'),
    orNotSupplied(by, words),
    orNotSupplied(test.witness, words),
    stated([test.pressure, test.duration].flatMap(one => (one ? [showStated(one)] : [])).join(', ') || '–'),
    resultOf(test, words)
  ]
}

function resultOf({ result, passed }: TestReport, words: Words): Value {
  const w = words.closeout.tests
  if (result === undefined && passed === undefined) return notSupplied(words)
  const verdict = passed === undefined ? undefined : passed ? w.passed : w.failed
  return {
    ...stated([verdict, result].filter(Boolean).join(': ')),
    ...(passed === false ? { state: 'bad' as const } : {})
  }
}
