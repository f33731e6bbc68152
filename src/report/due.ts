import type { DueItem } from '../binder/due-items.ts'
import { shoppingList } from '../binder/shopping.ts'
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

/** Steps of the list: what is told apart in it by how many days are left. */
const STEPS: readonly (readonly [label: string, least: number, most: number])[] = [
  ['Overdue', -Infinity, -1],
  ['Within 30 days', 0, 30],
  ['Within 60 days', 31, 60],
  ['Within 90 days', 61, 90],
  ['Later', 91, Infinity]
]

/** For a terminal: what has no date stands first, then by date, in steps of 30 days. */
export function dueText(items: readonly DueItem[], on: IsoDate, within: number): string {
  if (items.length === 0) return `Nothing is due within ${within} days of ${on}.`
  const left = (item: DueItem) => (item.dueOn === undefined ? undefined : daysBetween(on, item.dueOn))
  const undated = items.filter(item => item.dueOn === undefined)
  const steps = STEPS.map(([label, least, most]) => ({
    label,
    items: items.filter(item => {
      const days = left(item)
      return days !== undefined && days >= least && days <= most
    })
  }))
  const groups = [{ label: 'No date', items: undated }, ...steps].filter(group => group.items.length > 0)
  const width = Math.max(...items.map(item => item.site.length))
  const row = (item: DueItem) => {
    const days = left(item)
    const when = days === undefined ? '' : whenText(days)
    return `  ${(item.dueOn ?? 'NO DATE').padEnd(11)} ${when.padEnd(17)} ${item.site.padEnd(width)}  ${whatText(item)}`
  }
  const shopping = shoppingList(items).map(
    ({ item, count, spares }) => `  ${String(count).padStart(4)} × ${item}${spares > 0 ? `, and ${spares} spare` : ''}`
  )
  return [
    `Due within ${within} days of ${on}, no date first:`,
    ...groups.flatMap(group => ['', `${group.label}, ${group.items.length}:`, ...group.items.map(row)]),
    ...(shopping.length > 0 ? ['', 'To take along (a set to spare for every ten begun):', ...shopping] : [])
  ].join('\n')
}

function whatText({ site, box, subject, what }: DueItem): string {
  const at = box !== undefined && box !== subject ? `${subject} in ${box}` : subject
  return subject === site ? what : `${what}, ${at}`
}

function stateOf({ dueOn, state }: DueItem, on: IsoDate): 'overdue' | 'due' | 'no-date' {
  if (state === 'no-date' || dueOn === undefined) return 'no-date'
  return daysBetween(on, dueOn) < 0 ? 'overdue' : 'due'
}

function whenText(days: number): string {
  if (days < 0) return `${-days} days overdue`
  return days === 0 ? 'today' : `in ${days} days`
}
