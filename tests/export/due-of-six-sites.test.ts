import { describe, expect, it } from 'vitest'
import { dueJson } from '../../src/report/due.ts'
import { siteSummary } from '../../src/binder/site-summary.ts'
import { wordsOf } from '../../src/words/languages.ts'
import { EN_US } from '../../src/words/words.ts'
import { addDays, daysBetween } from '../../src/units/date.ts'
import { ON, contexts, demoDue } from './due-fixture.ts'

interface Listed {
  readonly site: string
  readonly box: string | null
  readonly subject: string
  readonly kind: string
  readonly due_on: string | null
  readonly state: string
  readonly needs: readonly { readonly item: string; readonly count: number }[]
}
interface List {
  readonly due: readonly Listed[]
  readonly shopping: readonly { readonly item: string; readonly count: number; readonly spares: number }[]
}

/** As `due --within 60d --format json` prints it, for one site or for all. */
function list(site?: string, within = 60): List {
  const end = addDays(ON, within)
  const items = demoDue.filter(
    one => (site === undefined || one.site === site) && (one.dueOn === undefined || one.dueOn <= end)
  )
  return dueJson(items, ON) as List
}
const rows = (site: string, kind?: string, within?: number) =>
  list(site, within)
    .due.filter(one => kind === undefined || one.kind === kind)
    .map(one => [one.subject, one.due_on, one.state])
const overdueBy = (day: string): number => daysBetween(day as typeof ON, ON)

/* The six sites as their descriptions state them, as of 2026-05-01. Worked out by hand there, not here. */
describe('what is due on the six sites', () => {
  it('Kestrel Cross: the battery is 17 days overdue, the warranty has no date', () => {
    expect(rows('kestrel-cross', 'battery')).toEqual([['K1', '2026-04-14', 'overdue']])
    expect(overdueBy('2026-04-14')).toBe(17)
    expect(rows('kestrel-cross', 'warranty-end').map(row => row[2])).toEqual(['no-date'])
  })

  it('Larkmoor: C5 409 days, C3 and C4 52 days overdue; C6 and C7 not yet', () => {
    expect(rows('larkmoor-median', 'battery')).toEqual([
      ['C5', '2025-03-18', 'overdue'],
      ['C3', '2026-03-10', 'overdue'],
      ['C4', '2026-03-10', 'overdue']
    ])
    expect([overdueBy('2025-03-18'), overdueBy('2026-03-10')]).toEqual([409, 52])
    expect(rows('larkmoor-median', 'battery', 400).slice(3)).toEqual([
      ['C6', '2026-09-02', 'due'],
      ['C7', '2026-09-02', 'due']
    ])
  })

  it('Tinder Street: no battery; the backflow test has no date and is listed', () => {
    expect(rows('tinder-street-roof', 'battery')).toEqual([])
    expect(rows('tinder-street-roof', 'backflow')).toEqual([['S1', null, 'no-date']])
  })

  it('Osmund Vale: the backflow test is 11 days overdue; the pulses bring the battery to 2026-07-18', () => {
    expect(rows('osmund-vale-nursery', 'backflow')).toEqual([['S1', '2026-04-20', 'overdue']])
    expect(overdueBy('2026-04-20')).toBe(11)
    expect(rows('osmund-vale-nursery', 'battery')).toEqual([])
    expect(rows('osmund-vale-nursery', 'battery', 90)).toEqual([['N1', '2026-07-18', 'due']])
  })

  it('Brindle Common: nothing of any battery', () => {
    expect(rows('brindle-common', 'battery', 90)).toEqual([])
  })

  it('Mercer Row: 13 of 9 V and no AA, with 2 to spare; none of the three boxes that are away; each box once', () => {
    const { due, shopping } = list('mercer-row')
    const boxes = due.filter(one => one.kind === 'battery').map(one => one.box)
    expect(shopping).toEqual([{ item: '9 V alkaline', count: 13, spares: 2 }])
    expect(boxes).toHaveLength(13)
    expect(new Set(boxes).size).toBe(13)
    for (const away of ['MR-05', 'MR-06', 'MR-11']) expect(boxes).not.toContain(away)
    expect(rows('mercer-row', 'battery').map(row => row[1])).toEqual([
      ...Array.from({ length: 6 }, () => '2026-05-20'),
      ...Array.from({ length: 7 }, () => '2026-06-18')
    ])
  })

  it('Mercer Row: the warranty of 01 to 16 ends on 2026-06-30, that of 17 to 22 has no date', () => {
    const ends = rows('mercer-row', 'warranty-end')
    expect(ends.map(row => row.slice(1))).toEqual([
      [null, 'no-date'],
      ['2026-06-30', 'due']
    ])
    expect(ends[0]?.[0]).toContain('MR-17')
    expect(ends[1]?.[0]).toContain('MR-01')
  })

  it('all six together need 17 of 9 V within 60 days: 1 at Kestrel Cross, 3 at Larkmoor, 13 at Mercer Row', () => {
    const six = [
      'kestrel-cross',
      'larkmoor-median',
      'tinder-street-roof',
      'osmund-vale-nursery',
      'brindle-common',
      'mercer-row'
    ]
    const counts = six.map(site => list(site).shopping.find(one => one.item === '9 V alkaline')?.count ?? 0)
    expect(counts).toEqual([1, 3, 0, 0, 0, 13])
  })
})

it('the lists of the office are in one language, whatever that of a site', () => {
  const [first] = contexts
  if (!first) throw new Error('no site')
  const spanish = { ...first, words: wordsOf('es') }
  expect(siteSummary(spanish, EN_US).due).toEqual(siteSummary(first, EN_US).due)
})
