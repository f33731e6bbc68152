import { roleIn } from '../role-words.ts'
import { TEST_KINDS } from '../../model/closeout.ts'
import type { TestReport } from '../../model/closeout.ts'
import type { Quantity } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import type { Words } from '../../words/words.ts'
import type { Block, Section, Value } from '../blocks.ts'
import { attachmentBlocks } from '../attachments.ts'
import type { PageContext } from '../context.ts'
import { measured, notSupplied, orNotSupplied, stated } from '../values.ts'

/** Empty lines of each sheet that is filled in by hand. */
const SHEET_LINES = 5

/** What was tested before acceptance, and sheets to test again by. */
export function testReportsSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.closeout.tests
  const tests = site.closeout?.tests ?? []
  const lacking = TEST_KINDS.filter(kind => !tests.some(test => test.kind === kind))
  const table: Block = {
    kind: 'table',
    columns: [w.kind, w.on, w.of, w.by, w.witness, w.conditions, words.handover.tests.meter, w.result].map(label => ({
      label
    })),
    rows: [...tests.map(test => row(test, words)), ...lacking.map(kind => lackingRow(w.kinds[kind], words))],
    notes: [words.handover.tests.hint]
  }
  const sheets = [
    [w.pressureSheet, w.pressureColumns],
    [w.readingSheet, w.readingColumns],
    [w.inspectionSheet, w.inspectionColumns]
  ] as const
  return {
    id: 'test-reports',
    title: words.closeout.sections.tests,
    newPage: false,
    notSupplied: tests.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      table,
      pressures(context),
      baseline(context),
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
  const independent = test.independent === true ? words.handover.tests.independent.toLowerCase() : undefined
  const by = [test.by, test.company, independent].filter(Boolean).join(', ')
  return [
    stated(w.kinds[test.kind]),
    orNotSupplied(test.on, words, true),
    stated(test.of ?? '–'),
    orNotSupplied(by, words),
    orNotSupplied(test.witness, words),
    stated([test.pressure, test.duration].flatMap(one => (one ? [showStated(one)] : [])).join(', ') || '–'),
    stated(test.meter ?? '–'),
    resultOf(test, words)
  ]
}

/** A kind of test of which nothing was handed over. */
function lackingRow(kind: string, words: Words): Value[] {
  const [dash, gap] = [stated('–'), notSupplied(words)]
  return [stated(kind), gap, dash, dash, dash, dash, dash, gap]
}

/** The readings that every later one is held against. */
function baseline({ site, words }: PageContext): Block {
  const w = words.handover.tests
  const columns = w.baselineColumns.map(label => ({ label }))
  const rows = site.stations.map(({ id, readings: [first] }) => [
    stated(id, true),
    orNotSupplied(first?.on, words, true),
    halves(first?.coil, first?.closingCoil, words),
    halves(first?.loop, first?.closingLoop, words),
    first?.temperature ? measured(showStated(first.temperature)) : notSupplied(words),
    orNotSupplied(first?.by === undefined ? undefined : roleIn(first.by, words), words)
  ])
  return rows.length === 0
    ? { kind: 'not-supplied', text: `${w.baseline}: ${words.binder.notSupplied}` }
    : { kind: 'table', caption: w.baseline, columns, rows }
}

/** Of three leads both halves, where both were measured. */
function halves(
  ohm: Quantity<'resistance'> | undefined,
  closing: Quantity<'resistance'> | undefined,
  words: Words
): Value {
  if (!ohm) return notSupplied(words)
  return measured(closing ? words.wiring.halves(showStated(ohm), showStated(closing)) : showStated(ohm))
}

function pressures({ site, words }: PageContext): Block {
  const w = words.handover.tests
  const at = site.stations.flatMap(({ zone, valves }) =>
    valves.flatMap(({ normalPressure }) => (normalPressure ? [`${zone} ${showStated(normalPressure)}`] : []))
  )
  const still = site.supplies.flatMap(({ id, staticPressure }) =>
    staticPressure ? [`${id} ${showStated(staticPressure)}`] : []
  )
  return {
    kind: 'facts',
    caption: words.closeout.tests.kinds['start-up pressures'],
    rows: [
      { label: w.pointPressure, value: orNotSupplied(still.join('; '), words) },
      { label: w.emitterPressure, value: orNotSupplied(at.join('; '), words) }
    ]
  }
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
