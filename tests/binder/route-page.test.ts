import { describe, expect, it } from 'vitest'
import { makeRoutePage } from '../../src/binder/make-route-page.ts'
import { siteSummary } from '../../src/binder/site-summary.ts'
import { EN_US } from '../../src/words/words.ts'
import { ON, agreed, contexts } from '../export/due-fixture.ts'

const page = (within = 60, of = contexts) =>
  makeRoutePage({ sites: of.map(one => siteSummary(one, EN_US)), on: ON, within, words: EN_US, version: '0' })
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
