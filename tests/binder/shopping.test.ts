import { describe, expect, it } from 'vitest'
import { shoppingList } from '../../src/binder/shopping.ts'
import { daysBetween } from '../../src/units/date.ts'
import { ON, agreed, demoDue, item } from '../export/due-fixture.ts'

const set = (subject: string, count = 1, kind = '9 V alkaline') => item({ subject, needs: [{ item: kind, count }] })
const sets = (many: number) => Array.from({ length: many }, (_, index) => set(`K${index}`))

describe('what to take along', () => {
  it('for the demo sites within 60 days is what was agreed, and nothing of boxes that are away', () => {
    for (const [site, { due_within_60_days: due }] of Object.entries(agreed.sites)) {
      if (!due) continue
      const items = demoDue.filter(
        one => one.site === site && one.kind === 'battery' && (!one.dueOn || daysBetween(ON, one.dueOn) <= 60)
      )
      for (const [size, count] of Object.entries(due.battery)) {
        const found = shoppingList(items).filter(one => one.item.startsWith(size))
        expect(
          found.reduce((sum, one) => sum + one.count, 0),
          `${site} ${size}`
        ).toBe(count)
      }
      const named = items.map(one => one.box ?? one.subject)
      expect(named.filter(box => due.out_of_service_excluded.includes(box))).toEqual([])
      expect(named).toHaveLength(new Set(named).size)
    }
  })

  it('names the visit that should change a set, where one comes before it is due', () => {
    const of = (site: string, subject: string) =>
      demoDue.find(one => one.site === site && one.subject === subject && one.kind === 'battery')
    expect(of('larkmoor-median', 'C6')?.what).toContain('(change at: start-up visit, 2026-07-01)')
    // Overdue: the next visit, whatever it is for, needs no name.
    expect(of('larkmoor-median', 'C5')?.what).not.toContain('change at')
  })

  it('never counts a thing twice', () => {
    expect(shoppingList([set('K1'), set('K1'), set('K2')])).toEqual([{ item: '9 V alkaline', count: 2, spares: 1 }])
  })

  it('adds cells of one kind however they are spelled, and keeps kinds apart', () => {
    expect(
      shoppingList([set('K1', 4, 'AA alkaline'), set('K2', 4, 'aa  Alkaline'), set('K3', 4, 'AA lithium')])
    ).toEqual([
      { item: 'AA alkaline', count: 8, spares: 4 },
      { item: 'AA lithium', count: 4, spares: 4 }
    ])
  })

  it.each([
    [1, 1],
    [10, 1],
    [11, 2],
    [20, 2]
  ])('has one set to spare for every ten begun: %i sets, %i to spare', (many, spares) => {
    expect(shoppingList(sets(many))).toEqual([{ item: '9 V alkaline', count: many, spares }])
  })

  it('has no spare of parts, and nothing where nothing is needed', () => {
    expect(shoppingList([item({ kind: 'inspection', needs: [{ item: 'filter screen', count: 1 }] })])).toEqual([
      { item: 'filter screen', count: 1, spares: 0 }
    ])
    expect(shoppingList([])).toEqual([])
  })
})
