import { fromEpochDay, inSeason } from '../../units/date.ts'
import type { EpochDay, MonthDay } from '../../units/date.ts'
import type { Window } from '../../units/clock.ts'
import { daylightMinutes } from '../../units/time-zone.ts'
import { daysByNumber } from './address-days.ts'
import type { AddressDays, HouseNumber } from './address-days.ts'
import type { WateringSeason } from './controller.ts'
import { runsOn } from './days.ts'
import { numberer } from './numberer.ts'
import type { DayRule } from './program.ts'
import { asWindows, complement, insideOf, merged, NONE, outsideOf, WHOLE_DAY } from './stretches.ts'
import type { Stretches } from './stretches.ts'
import type { BarredOn } from './windows.ts'

/** What of a watering rule decides when water may flow. The site model's rules have this shape. */
export interface TimedRule {
  /** Hours in which watering is allowed; none named means every hour. */
  readonly windows: readonly Window[]
  readonly barred?: readonly Window[]
  readonly days?: DayRule
  readonly daysByAddress?: AddressDays
  /** Days of the year on which the rule holds. */
  readonly dates?: WateringSeason
  /** By the legal clock of the place. */
  readonly when?: 'daylight-saving' | 'standard'
}

/** What of a site a rule may ask for. */
export interface RuleFacts {
  readonly houseNumber?: HouseNumber | undefined
  /** IANA name. */
  readonly timeZone?: string | undefined
}

/** The parts of a rule that bar watering: outside its hours, in its forbidden hours, off its days. */
export type RulePart = 'window' | 'not' | 'days'
const HOURS: readonly RulePart[] = ['window', 'not']
export const PARTS: readonly RulePart[] = [...HOURS, 'days']

/** True where every rule in force lets water flow at a minute of a day. The stricter rule wins, since all must be kept. */
export function allowedOn(rules: readonly TimedRule[], day: EpochDay, minute: number, facts: RuleFacts): boolean {
  const second = minute * 60
  return barredTogether(rules, PARTS, facts)(day).every(([fromS, toS]) => second < fromS || second >= toS)
}

/** The hours that every rule in force on a day allows, whatever the days they name; none where they leave no hour. */
export function hoursAllowed(rules: readonly TimedRule[], facts: RuleFacts): (day: EpochDay) => readonly Window[] {
  const barred = barredTogether(rules, HOURS, facts)
  const known = new Map<Stretches, readonly Window[]>()
  return day => {
    const stretches = barred(day)
    const windows = known.get(stretches) ?? asWindows(complement(stretches))
    known.set(stretches, windows)
    return windows
  }
}

/** What parts of the rules bar of each day together. Days that are barred alike share one list. */
export function barredTogether(rules: readonly TimedRule[], parts: readonly RulePart[], facts: RuleFacts): BarredOn {
  const each = rules.flatMap(rule => parts.map(part => barredBy(rule, part, facts)))
  const idOf = numberer<Stretches>()
  const known = new Map<string, Stretches>()
  return day => {
    const lists = each.map(barredOn => barredOn(day))
    const key = lists.map(idOf).join()
    const together = known.get(key) ?? merged(lists.flat())
    known.set(key, together)
    return together
  }
}

/** What one part of a rule bars of each day. Days that are barred alike share one list. */
export function barredBy(rule: TimedRule, part: RulePart, facts: RuleFacts): BarredOn {
  const isInForce = inForce(rule, facts)
  const onDay = barredInForce(rule, part, facts)
  return day => (isInForce(day) ? onDay(day) : NONE)
}

function barredInForce(rule: TimedRule, part: RulePart, facts: RuleFacts): BarredOn {
  if (part === 'days') {
    const days = daysOfRule(rule, facts)
    return day => (days === undefined || runsOn(days, day) ? NONE : WHOLE_DAY)
  }
  const stretches = part === 'window' ? outsideOf(rule.windows) : insideOf(rule.barred ?? [])
  return () => stretches
}

/** The days that a rule names for a site. Undefined where it names none, or where they go by a house number that is not stated. */
export function daysOfRule({ days, daysByAddress }: TimedRule, { houseNumber }: RuleFacts): DayRule | undefined {
  if (days !== undefined || !daysByAddress || houseNumber === undefined) return days
  return daysByNumber(daysByAddress, houseNumber)
}

/**
 * On which days a rule holds: within its dates, which may run across the year's end, and while the legal clock is on daylight saving, or
 * is not. A rule that goes by daylight saving is never in force where the time zone is not stated.
 */
export function inForce(
  { dates, when }: Pick<TimedRule, 'dates' | 'when'>,
  { timeZone }: RuleFacts
): (day: EpochDay) => boolean {
  if (when !== undefined && timeZone === undefined) return () => false
  return day => {
    if (dates && !inSeason(fromEpochDay(day).slice(5) as MonthDay, dates)) return false
    if (when === undefined || timeZone === undefined) return true
    return daylightMinutes(day, timeZone) > 0 === (when === 'daylight-saving')
  }
}
