import type { DueItem } from '../binder/due-items.ts'
import { daysBetween } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { csvText } from './csv.ts'

const COLUMNS = ['state', 'due_on', 'days_left', 'site', 'title', 'box', 'subject', 'kind', 'what', 'needs'] as const

/** The due list for a spreadsheet; `days_left` is below zero where it is overdue, and empty where there is no date. */
export function dueCsv(items: readonly DueItem[], on: IsoDate): string {
  return csvText(
    COLUMNS,
    items.map(item => {
      const left = item.dueOn === undefined ? null : daysBetween(on, item.dueOn)
      return [
        left === null ? 'no date' : left < 0 ? 'overdue' : 'due',
        item.dueOn ?? '',
        left,
        item.site,
        item.siteTitle,
        item.box ?? '',
        item.subject,
        item.kind,
        item.what,
        item.needs.map(({ item: name, count }) => `${count} × ${name}`).join('; ')
      ]
    })
  )
}
