import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { addDays, addInterval } from '../../units/date.ts'
import type { Interval, IsoDate } from '../../units/date.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { dateOf, intervalOf, optionalNumber } from '../inputs.ts'

export interface DueFacts {
  /** The day it was fitted, tested or last done. */
  readonly last?: IsoDate
  readonly interval?: Interval
  /** Whole days of computed life. */
  readonly lifeDays?: number
  readonly dateCode?: IsoDate
  /** Repaired, moved or altered: due again on that day, where it is later than `last`. */
  readonly event?: IsoDate
}

export type DueBecause = 'interval' | 'computed life' | 'date code' | 'event'

export interface Due {
  readonly dueOn: IsoDate
  readonly because: DueBecause
  /** "12 months after 2025-04-14". */
  readonly words: string
}

/** 12 months where none is stated (rule of this project). */
export const DEFAULT_INTERVAL: Interval = { months: 12, days: 0, text: '12 months' }

/** Later than any date a site has; a life beyond it sets none. */
const LONGEST_LIFE_DAYS = 36_525

/**
 * The earliest of: last + interval, last + computed life, the date code, and a later event. Month steps clamp to the month's end:
 * 2024-02-29 and 12 months is 2025-02-28. Ties go to the one named first here. Absent without a date to count from.
 */
export function dueDate(facts: DueFacts): Maybe<Worked<Due>> {
  const { last, lifeDays, dateCode, event } = facts
  if (last === undefined) return absent('no date to count from')
  const interval = facts.interval ?? DEFAULT_INTERVAL
  const assumed = facts.interval ? '' : ', where none is stated (rule of this project)'
  const candidates: Due[] = [
    {
      dueOn: addInterval(last, interval),
      because: 'interval',
      words: `${interval.text} after ${last}${assumed}`
    }
  ]
  if (lifeDays !== undefined && lifeDays <= LONGEST_LIFE_DAYS)
    candidates.push({
      dueOn: addDays(last, Math.floor(lifeDays)),
      because: 'computed life',
      words: `computed life of ${Math.floor(lifeDays)} days after ${last}`
    })
  if (dateCode !== undefined)
    candidates.push({ dueOn: dateCode, because: 'date code', words: `date code of the cells, ${dateCode}` })
  if (event !== undefined && event > last)
    candidates.push({ dueOn: event, because: 'event', words: `repaired, moved or altered on ${event}` })
  const value = candidates.reduce((least, one) => (one.dueOn < least.dueOn ? one : least))
  const steps = candidates.map(one => `${one.words}: ${one.dueOn}`)
  return { value, steps: candidates.length > 1 ? [...steps, `the earliest: ${value.dueOn} (${value.because})`] : steps }
}

export const dueDateCard: Calculation = {
  name: 'due-date',
  title: 'The day something is due',
  does: 'Gives the day on which a battery, a test or a service is due, and what set it: the interval, the computed life, the date code, or a repair.',
  inputs: {
    fitted: { kind: { is: 'date' }, does: 'day it was fitted, tested or last done' },
    interval: { kind: { is: 'interval' }, does: 'stated interval', optional: '12 months' },
    'life-days': { kind: { is: 'number' }, does: 'computed life in days', optional: 'none' },
    'date-code': { kind: { is: 'date' }, does: 'use-by date on the cells', optional: 'none' },
    event: { kind: { is: 'date' }, does: 'day it was repaired, moved or altered afterwards', optional: 'none' }
  },
  outputs: {
    due: { does: 'day it is due', unit: '' },
    because: { does: 'what set the day: interval, computed life, date code or event', unit: '' }
  },
  sources: ['calendar', 'product-sheet', 'project-rule'],
  limits: 'The season never sets a due date. Local rules may ask for a shorter interval.',
  run: inputs => {
    const lifeDays = optionalNumber(inputs, 'life-days')
    if (lifeDays !== undefined && !(lifeDays > 0)) return absent('life-days must be more than zero')
    const interval = intervalOf(inputs, 'interval')
    const dates = {
      'date-code': inputs['date-code'] as IsoDate | undefined,
      event: inputs['event'] as IsoDate | undefined
    }
    const due = dueDate({
      last: dateOf(inputs, 'fitted'),
      ...(interval ? { interval } : {}),
      ...(lifeDays === undefined ? {} : { lifeDays }),
      ...(dates['date-code'] ? { dateCode: dates['date-code'] } : {}),
      ...(dates.event ? { event: dates.event } : {})
    })
    return isAbsent(due) ? due : { value: { due: due.value.dueOn, because: due.value.because }, steps: due.steps }
  },
  example: {
    inputs: { fitted: '2026-02-02', interval: '12 months', 'life-days': '166' },
    outputs: { due: '2026-07-18', because: 'computed life' }
  }
}
