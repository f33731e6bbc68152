import { describe, expect, it } from 'vitest'
import { makeRoutePage } from '../../src/binder/make-route-page.ts'
import { siteSummary } from '../../src/binder/site-summary.ts'
import { EN_US } from '../../src/words/words.ts'
import { ON, agreed, contexts } from '../export/due-fixture.ts'

const page = (within = 60, of = contexts, weekS?: number) =>
  makeRoutePage({
    sites: of.map(one => siteSummary(one, EN_US)),
    on: ON,
    within,
    words: EN_US,
    version: '0',
    ...(weekS === undefined ? {} : { weekS })
  })
const stops = (one: ReturnType<typeof page>) => one.areas.flatMap(area => area.stops)
const mercer = stops(page()).find(stop => stop.site === 'mercer-row')

describe('the route sheet', () => {
  it('has each site once, numbered in order', () => {
    const all = stops(page())
    expect(all.map(stop => stop.number)).toEqual(all.map((_, index) => index + 1))
    expect(new Set(all.map(stop => stop.site)).size).toBe(all.length)
  })

  it('has each box of Mercer Row once, and none of those that are away', () => {
    const boxes = mercer?.tasks.map(task => task.box) ?? []
    expect(boxes).toHaveLength(agreed.sites['mercer-row']?.due_within_60_days?.battery['9 V'] ?? 0)
    expect(new Set(boxes).size).toBe(boxes.length)
    for (const away of ['MR-05', 'MR-06', 'MR-11']) expect(boxes).not.toContain(away)
  })

  it('adds the minutes of the tasks and of the boxes that are opened: 13 × 10 and 13 × 5', () => {
    expect(mercer?.facts[0]).toBe('3\u00a0h 15\u00a0min')
  })

  it('counts what to take along as the list does: 13 and 2 to spare for Mercer Row alone', () => {
    const alone = page(
      60,
      contexts.filter(one => one.site.id === 'mercer-row')
    )
    expect(alone.shopping.rows).toEqual([['9 V alkaline', '13', '2', '15']])
  })

  it('puts the work into weeks from their Mondays, and what is overdue or has no date to now', () => {
    const weeks = page().weeks.rows.map(row => row[0])
    expect(weeks[0]).toBe(EN_US.due.route.now)
    for (const monday of weeks.slice(1)) expect(new Date(`${monday}T00:00Z`).getUTCDay()).toBe(1)
  })

  it('levels the work to what a week holds: nothing is lost, and a week that holds more all the same is marked', () => {
    const minutesOf = (text = ''): number => {
      const [, hours = '0', minutes = '0'] = /^(?:(\d+)\u00a0h ?)?(?:(\d+)\u00a0min)?/u.exec(text) ?? []
      return 60 * Number(hours) + Number(minutes)
    }
    const total = (rows: readonly (readonly string[])[], column: number): number =>
      rows.reduce((sum, row) => sum + minutesOf(row[column]), 0)
    const plain = page(60).weeks
    expect(plain.columns).toHaveLength(4)
    for (const hours of [4, 12, 40]) {
      const { rows, columns } = page(60, contexts, hours * 3600).weeks
      expect(columns[4]).toBe(EN_US.due.route.weekColumns.planned(`${hours}\u00a0h`))
      expect(total(rows, 4)).toBe(total(plain.rows, 3))
      for (const row of rows) expect(row[4]?.includes('OVER')).toBe(minutesOf(row[4]) > 60 * hours)
      // What is overdue is spread over the weeks, and none of it stays in the line of what is late.
      expect(rows[0]?.slice(4)).toEqual([EN_US.due.route.dash, EN_US.due.route.dash])
      expect(rows.map(row => row[0]).slice(1)).toEqual(
        rows
          .map(row => row[0] ?? '')
          .slice(1)
          .sort()
      )
    }
  })

  it('lists sites without coordinates last, under their own heading', () => {
    const [first, ...others] = contexts
    if (!first) throw new Error('no site')
    const { location: _, ...lost } = first.site
    const areas = page(400, [{ ...first, site: lost }, ...others]).areas
    expect(areas.at(-1)?.heading).toContain(EN_US.due.route.noPlace)
    expect(areas.at(-1)?.stops.map(stop => stop.site)).toEqual([first.site.id])
  })

  it('is empty, and says so, where nothing is due', () => {
    const none = page(0, [])
    expect([none.areas, none.empty]).toEqual([[], EN_US.due.route.empty])
  })
})
