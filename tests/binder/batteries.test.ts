import { describe, expect, it } from 'vitest'
import type { Block, Section, TableBlock } from '../../src/binder/blocks.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

/** The battery section of the base site, with keys of the site and of its sheet replaced. */
function sectionOf(keys = '', sheet = ''): Section {
  const { site, faults } = loadSite(baseSite(keys, { sheet }))
  if (!site) throw new Error(JSON.stringify(faults))
  expect(faults).toEqual([])
  const binder = makeBinder({
    site,
    plan: makePlan(site, date(BASE_ON)),
    findings: [],
    words: EN_US,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0.0.0',
    prints: []
  })
  const section = binder.sections.find(one => one.id === 'batteries')
  if (!section) throw new Error('no battery section')
  return section
}

const tableWith = ({ blocks }: Section, label: string): TableBlock | undefined =>
  blocks.find((one): one is TableBlock => one.kind === 'table' && one.columns.some(column => column.label === label))
const listOf = ({ blocks }: Section): readonly string[] =>
  blocks.flatMap((one: Block) => (one.kind === 'list' ? one.items : []))
const figures = ({ blocks }: Section) =>
  blocks.flatMap(one => (one.kind === 'figure' && one.figure.figure === 'battery-year' ? [one.figure] : []))

describe('the battery section', () => {
  it('names beside each due date the visit that should do it', () => {
    const due = tableWith(sectionOf(), 'Change at')
    expect(due?.rows[0]?.map(({ text }) => text)).toContain('visit that ends the season, 2026-10-15')
    const task = sectionOf('maintenance: [{ task: filter round, every: 1 month, due: 2026-06-01 }]\n')
    expect(tableWith(task, 'Change at')?.rows[0]?.map(({ text }) => text)).toContain('filter round, 2027-03-01')
  })

  it('says until when each limit lasts, and what the charge goes into', () => {
    const section = sectionOf(
      '',
      'battery: { kind: 9 V alkaline, count: 1, capacity: 500 mAh, usable: 80 %, self-discharge: 0 % }\ndrain: 40 µA\npulse: { charge: 25 mC }\n'
    )
    const until = tableWith(section, 'Charge lasts until')?.rows[0]?.map(({ text }) => text)
    expect(until).toContain('2027-03-20')
    expect(until?.[1]).toMatch(/^2027-05-/u)
    const spent = tableWith(section, 'Drawn all the time')?.rows[0]?.map(({ text }) => text)
    expect(spent).toContain('500\u00a0mAh × 80\u00a0%')
    expect(spent).toContain('351')
  })

  it('says what is not stated instead of leaving it out', () => {
    const row = tableWith(sectionOf(), 'Drawn all the time')?.rows[0]
    expect(row?.[1]?.standing).toBe('not-computed')
    expect(row?.[1]?.note).toMatch(/neither drain nor pulse/u)
  })

  it('draws the year from fitted to due, with season, visit and due date, and the pulses of both ends in part', () => {
    const [figure] = figures(
      sectionOf(
        'controllers:\n  - id: K1\n    box: VB1\n    sheet: _shared/sheets/plain.md\n    battery: { kind: 9 V alkaline, count: 1, fitted: 2026-04-16, interval: 12 months }\n    programs: [{ id: A, days: every day, starts: ["23:10"], stations: { 1: 25 min } }]\n'
      )
    )
    expect(figure?.months).toHaveLength(13)
    expect(figure?.months[0]).toEqual({ label: 'Apr', year: '2026', pulses: 30, text: '30' })
    expect(figure?.months[1]?.pulses).toBe(62)
    expect(figure?.months[12]).toMatchObject({ label: 'Apr', pulses: 30 })
    expect(figure?.marks.map(({ kind }) => kind)).toEqual(['fitted', 'today', 'visit', 'due'])
    expect(figure?.seasons).toHaveLength(2)
    expect(figure?.marks.every(({ at }) => at >= 0 && at <= 1)).toBe(true)
  })

  it('has no year where nobody wrote a date', () => {
    expect(
      figures(sectionOf('controllers:\n  - { id: K1, box: VB1, battery: { kind: 9 V alkaline, count: 1 } }\n'))
    ).toEqual([])
  })

  it.each([
    ['keeps-program: yes\n', /K1: the programs are kept while the cells are out\./u],
    ['keeps-program: no\n', /K1: the programs are lost .* key in the program card/u],
    ['keeps-program: 30 s\n', /K1: the programs are kept for 30\u00a0s without cells/u],
    ['', /K1: the sheet does not say whether the programs are kept/u],
    ['valve-on-low-battery: stays as it is\n', /K1: by its sheet an open valve stays open/u],
    ['valve-on-low-battery: closes\n', /K1: by its sheet it closes its valves/u],
    ['keeps-program: no\nafter-memory-loss: "hold both keys"\n', /when clock and program are gone: hold both keys$/u]
  ])('tells at the change what the sheet says: %s', (sheet, said) => {
    expect(listOf(sectionOf('', sheet)).some(item => said.test(item))).toBe(true)
  })

  it('shows a panel month by month, and says where the spent cells go by the law of the place', () => {
    const keys =
      'controllers:\n  - { id: K1, box: VB1, power: solar, sheet: _shared/sheets/plain.md, battery: { kind: AA alkaline, count: 4, fitted: 2026-03-20 } }\n'
    const section = sectionOf(
      keys,
      'drain: 60 µA\npulse: { charge: 60 mC }\nsolar: { panel: 30 mW, battery: { volts: 3.6 V, capacity: 600 mAh } }\n'
    )
    const solar = tableWith(section, 'Is that enough')
    expect(solar?.rows).toHaveLength(12)
    expect(solar?.rows[11]?.map(({ text }) => text)).toEqual(['December', '1.2', '1.4', '1.4', 'TOO LITTLE'])
    expect(JSON.stringify(section.blocks)).toContain('Waste Batteries and Accumulators Regulations')
  })
})
