import { describe, expect, it } from 'vitest'
import { makeMapPage } from '../../src/binder/make-map-page.ts'
import { makeWaterPage } from '../../src/binder/make-water-page.ts'
import { siteSummary } from '../../src/binder/site-summary.ts'
import type { SiteSummary } from '../../src/binder/site-summary.ts'
import { EN_US } from '../../src/words/words.ts'
import { ON, contexts, item } from '../export/due-fixture.ts'

const [first] = contexts
if (!first) throw new Error('no site')
const plain = siteSummary(first, EN_US)
const input = (built: readonly SiteSummary[]) => ({ built, left: [], on: ON, words: EN_US, version: '0' })
const site = (id: string, more: Partial<SiteSummary> = {}): SiteSummary => ({
  ...plain,
  id,
  title: id,
  due: [],
  ...more
})
const water = (id: string, programmedM3: number, allowanceM3?: number, flowNotStated = 0): SiteSummary =>
  site(id, {
    water: { units: 'metric', programmedM3, flowNotStated, ...(allowanceM3 === undefined ? {} : { allowanceM3 }) }
  })

describe('water against budget', () => {
  const rows = (...built: readonly SiteSummary[]) => makeWaterPage(input(built)).rows

  it('has what is farthest over its budget first, and those without a budget last, none left out', () => {
    const found = rows(water('none', 900), water('half', 50, 100), water('over', 150, 100), water('even', 100, 100))
    expect(found.map(one => one.title)).toEqual(['over', 'even', 'half', 'none'])
    expect(found.map(one => one.share)).toEqual(['150\u00a0%', '100\u00a0%', '50\u00a0%', '–'])
  })

  it('marks a site as over only beyond its budget, and draws bars in one scale with the budget in it', () => {
    const [over, even] = rows(water('over', 150, 100), water('even', 100, 100))
    expect([over?.bar?.over, even?.bar?.over]).toEqual([true, false])
    expect(over?.bar?.width).toBe(100)
    expect(over?.bar?.mark).toBeCloseTo(100 / 1.5, 9)
    expect(even?.bar?.width).toBeCloseTo(even?.bar?.mark ?? 0, 9)
  })

  it('has no share of a budget of nothing, nor a bar where none is stated', () => {
    const found = rows(water('zero', 10, 0), water('none', 10))
    expect(found.map(one => [one.share, one.bar])).toEqual([
      ['–', undefined],
      ['–', undefined]
    ])
    expect(found.map(one => one.allowed)).toEqual(['0\u00a0m³', EN_US.fleet.noBudget])
  })

  it('says how many stations are not in the figure', () => {
    const notes = rows(water('a', 1, 9, 0), water('b', 1, 9, 1), water('c', 1, 9, 3)).map(one => one.note)
    expect(notes).toEqual(['', EN_US.fleet.noFlow(1), EN_US.fleet.noFlow(3)])
  })

  it('is made of what the plan says of each site', () => {
    const found = makeWaterPage(input(contexts.map(one => siteSummary(one, EN_US)))).rows
    expect(found).toHaveLength(contexts.length)
    const kestrel = contexts.find(one => one.site.id === 'kestrel-cross')
    const row = found.find(one => one.href === 'kestrel-cross/index.html')
    expect(row?.programmed).toBe(`${kestrel?.plan.budget.programmedM3.toFixed(1)}\u00a0m³`)
  })
})

describe('the map', () => {
  it('has a mark for each site with a position, and names those without', () => {
    const { at: _, ...lost } = site('lost')
    const page = makeMapPage(input([site('a', { at: { latitude: 1, longitude: 2 } }), lost]))
    expect(page.marks.map(one => [one.title, one.latitude, one.longitude])).toEqual([['a', 1, 2]])
    expect(page.missing).toEqual([{ title: 'lost', href: 'lost/index.html' }])
  })

  it('marks each site by the worst that is due there: overdue before no date before soon', () => {
    const state = (...states: readonly ('overdue' | 'due-soon' | 'no-date' | 'ok')[]) =>
      makeMapPage(
        input([site('a', { at: { latitude: 1, longitude: 2 }, due: states.map(one => item({ state: one })) })])
      ).marks[0]?.state
    expect(state()).toBe('good')
    expect(state('ok')).toBe('good')
    expect(state('ok', 'due-soon')).toBe('soon')
    expect(state('due-soon', 'no-date')).toBe('unknown')
    expect(state('no-date', 'overdue', 'due-soon')).toBe('bad')
  })

  it('says in a word what each mark means', () => {
    const page = makeMapPage(input([site('a', { at: { latitude: 1, longitude: 2 } })]))
    expect(page.states.map(one => one.state)).toEqual(['bad', 'soon', 'unknown', 'good'])
    expect(new Set(page.states.map(one => one.word)).size).toBe(4)
    expect(page.marks[0]?.word).toBe(EN_US.fleet.states.good)
  })
})
