import type { DueItem } from '../binder/due-items.ts'
import { groupBy, sortedBy, sum } from '../base/collections.ts'
import { daysBetween } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'

/** The due list as the contract of names has it. */
export function dueJson(items: readonly DueItem[], on: IsoDate): object {
  return {
    schema: 1,
    on,
    due: items.map(item => ({
      site: item.site,
      box: item.box ?? null,
      subject: item.subject,
      kind: item.kind,
      due_on: item.dueOn ?? null,
      state: stateOf(item, on),
      needs: item.needs
    })),
    shopping: shoppingList(items)
  }
}

/** What to take along, added up by item. */
export function shoppingList(items: readonly DueItem[]): { item: string; count: number }[] {
  const groups = groupBy(
    items.flatMap(item => item.needs),
    need => need.item
  )
  return sortedBy(
    [...groups].map(([item, needs]) => ({ item, count: sum(needs.map(need => need.count)) })),
    one => one.item
  )
}

export function dueText(items: readonly DueItem[], on: IsoDate, within: number): string {
  if (items.length === 0) return `Nothing is due within ${within} days of ${on}.`
  const rows = items.map(item => {
    const days = item.dueOn === undefined ? '' : whenText(daysBetween(on, item.dueOn))
    return `  ${(item.dueOn ?? 'NO DATE').padEnd(11)} ${days.padEnd(18)} ${item.site.padEnd(24)} ${item.subject.padEnd(8)} ${item.what}`
  })
  const shopping = shoppingList(items).map(({ item, count }) => `  ${String(count).padStart(3)} × ${item}`)
  return [
    `Due within ${within} days of ${on}, no date first:`,
    ...rows,
    ...(shopping.length > 0 ? ['', 'To take along, without spares:', ...shopping] : [])
  ].join('\n')
}

function stateOf({ dueOn, state }: DueItem, on: IsoDate): 'overdue' | 'due' | 'no-date' {
  if (state === 'no-date' || dueOn === undefined) return 'no-date'
  return daysBetween(on, dueOn) < 0 ? 'overdue' : 'due'
}

function whenText(days: number): string {
  if (days < 0) return `${-days} days overdue`
  return days === 0 ? 'today' : `in ${days} days`
}
