import type { DueItem } from './due-items.ts'
import { groupBy, sortedBy, sum } from '../base/collections.ts'

export interface ToBuy {
  readonly item: string
  /** What is put in, by the list. */
  readonly count: number
  /** On top of it. */
  readonly spares: number
}

/** One set more for every ten sets begun (rule of this project). */
export const SETS_PER_SPARE = 10

/** What to take along, added up by item. A thing that stands in the list twice is counted once. */
export function shoppingList(items: readonly DueItem[]): ToBuy[] {
  const once = [...new Map(items.map(item => [keyOf(item), item])).values()]
  const needs = once.flatMap(item => item.needs.map(need => ({ ...need, isSet: item.kind === 'battery' })))
  const groups = groupBy(needs, need => need.item.toLowerCase().replace(/\s+/gu, ''))
  const rows = [...groups.values()].map(group => {
    const sets = group.filter(need => need.isSet)
    const largest = Math.max(0, ...sets.map(need => need.count))
    return {
      item: group[0]?.item ?? '',
      count: sum(group.map(need => need.count)),
      spares: Math.ceil(sets.length / SETS_PER_SPARE) * largest
    }
  })
  return sortedBy(rows, one => one.item)
}

/** The thing behind an item of the list: it stays the same when its date moves. */
export function keyOf({ site, kind, subject, task }: DueItem): string {
  return [site, kind, subject, task?.task ?? ''].join('/')
}
