import { daysBetween } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'

/** Due soon counts from here, so that a change fits a route (rule of this project). */
export const DUE_SOON_DAYS = 60

export interface DueState {
  readonly state: 'ok' | 'due-soon' | 'overdue'
  /** Only where overdue: 1 on the day after the due date. */
  readonly daysOverdue?: number
}

/** On the due date itself it is due, not overdue. */
export function dueState(dueOn: IsoDate, on: IsoDate): DueState {
  const left = daysBetween(on, dueOn)
  if (left < 0) return { state: 'overdue', daysOverdue: -left }
  return { state: left <= DUE_SOON_DAYS ? 'due-soon' : 'ok' }
}
