import type { z } from 'zod'
import { parseDayRule, parseRunTime } from '../../domain/schedule/text.ts'
import type { DayRule, RunTime } from '../../domain/schedule/program.ts'
import { parseClock, parseWindow } from '../../units/clock.ts'
import type { ClockMinutes, Window } from '../../units/clock.ts'
import { isBeyondACentury, parseDate, parseInterval, parseMonthDay } from '../../units/date.ts'
import type { Interval, IsoDate, MonthDay } from '../../units/date.ts'
import type { QuantityProblem } from '../../units/quantity.ts'
import { dateWrong, monthDayWrong } from '../improve/date.ts'
import { clockWrong, windowWrong } from '../improve/time.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, taken, wrong } from './field.ts'

/** A day, "2026-05-04". It stays text, so that no time zone moves it. */
export function date(does: string, example: string): z.ZodType<IsoDate> {
  return field({ does, example }, { type: 'string', format: 'date' }, value => {
    const day = parseDate(String(value))
    return day ? taken(day) : dateWrong(String(value).trim())
  })
}

/** A day of every year, "04-01": month, then day. */
export function monthDay(does: string, example: string): z.ZodType<MonthDay> {
  return field({ does, example }, { type: 'string', pattern: String.raw`^\d{2}-\d{2}$` }, value => {
    const day = parseMonthDay(String(value))
    return day ? taken(day) : monthDayWrong(String(value).trim())
  })
}

export function interval(does: string, example: string): z.ZodType<Interval> {
  return field({ does, example }, { type: 'string', pattern: String.raw`^\d+\s+(day|week|month|year)s?$` }, value => {
    const parsed = parseInterval(String(value))
    if (parsed && isBeyondACentury(parsed))
      return wrong('file/out-of-range', { range: 'must be 100 years or less', example })
    if (parsed && (parsed.months > 0 || parsed.days > 0)) return taken(parsed)
    const number = /^\d+$/u.exec(String(value).trim())?.[0]
    const units = ['months', 'days', 'weeks', 'years']
    return number === undefined
      ? wrong('file/not-understood', { expected: 'a number of days, weeks, months or years', example })
      : wrong('file/unit-missing', { noun: 'an interval', number, units }, `${number} months`)
  })
}

export function clock(does: string, example: string): z.ZodType<ClockMinutes> {
  return field({ does, example }, { type: 'string', pattern: String.raw`^\d{1,2}:\d{2}` }, value => {
    const minutes = parseClock(String(value))
    return minutes === undefined ? clockWrong(String(value).trim()) : taken(minutes)
  })
}

export function window(does: string, example: string): z.ZodType<Window> {
  return field(
    { does, example },
    { type: 'string', pattern: String.raw`^\d{1,2}:\d{2}.*[-–].*\d{1,2}:\d{2}` },
    value => {
      const parsed = parseWindow(String(value))
      return parsed ? taken(parsed) : windowWrong(String(value).trim())
    }
  )
}

const DAY_RULES = 'every day; every 2 days from 2026-04-02; even dates; odd dates; Mon Wed Fri'

/** On which days a program runs, or a rule lets it run. */
export function dayRule(does: string, example: string): z.ZodType<DayRule> {
  return field({ does, example }, { type: 'string' }, value => {
    const rule = parseDayRule(String(value))
    if (rule) return taken(rule)
    const bad = /\d{4}-\d{1,2}-\d{1,2}/u.exec(String(value))?.[0]
    if (bad !== undefined && !parseDate(bad)) {
      const fault = dateWrong(bad)
      return { ...fault, ...(fault.value === undefined ? {} : { value: String(value).replace(bad, fault.value) }) }
    }
    return wrong('file/not-understood', { expected: 'a rule for days', example: DAY_RULES })
  })
}

/** Far beyond what any controller keeps a valve open. */
const LONGEST_RUN_S = 7 * 86_400

/** "25 min", "2 x 6 min soak 30 min". */
export function runTime(does: string, example: string): z.ZodType<RunTime> {
  return field({ does, example }, { type: 'string', pattern: String.raw`\d\s*[A-Za-z]` }, value => {
    const parsed = parseRunTime(String(value))
    if (!parsed.ok) {
      const fault = quantityWrong(parsed.problem, 'duration', example, String(value).trim())
      const whole = fault.value === undefined ? undefined : inPlace(String(value).trim(), parsed.problem, fault.value)
      return wrong(fault.code, fault.details, whole)
    }
    const { cycles, cycleS, soakS } = parsed.value
    if (cycleS <= 0) return wrong('file/out-of-range', { range: 'must be more than zero', example })
    return cycles * (cycleS + soakS) <= LONGEST_RUN_S
      ? taken(parsed.value)
      : wrong('file/out-of-range', { range: 'must be no more than 7 days, soaks included', example })
  })
}

/** The whole run time with the part at fault put right: "2 x 6 soak 30 min" is "2 x 6 min soak 30 min". */
function inPlace(text: string, problem: QuantityProblem, value: string): string {
  if (problem.kind === 'decimal-comma') return text.replace(/(\d),(\d)/gu, '$1.$2')
  if (problem.kind !== 'unit-missing') return value
  const number = problem.number.replace(/[.+]/gu, String.raw`\$&`)
  return text.replace(new RegExp(`${number}(?=$|,?\\s+soak)`, 'u'), value)
}
