import { isInDates, isInSeason } from '../domain/schedule/active.ts'
import { daysOfYear } from '../domain/schedule/calendar-days.ts'
import type { CalendarDay } from '../domain/schedule/calendar-days.ts'
import type { ScheduledProgram } from '../domain/schedule/controller.ts'
import { minutesLeft } from '../domain/schedule/place-starts.ts'
import type { MinutesLeft } from '../domain/schedule/place-starts.ts'
import { barredTogether, daysOfRule } from '../domain/schedule/rules.ts'
import type { Stretches } from '../domain/schedule/stretches.ts'
import type { Controller, Site, WateringRule } from '../model/site.ts'
import { DAY_MINUTES } from '../units/clock.ts'
import type { EpochDay } from '../units/date.ts'
import { daylightMinutes } from '../units/time-zone.ts'
import { bindsStation, ruleFacts } from './rule-facts.ts'

type ProgramDates = Pick<ScheduledProgram, 'from' | 'to'>

/** What the rules of a site leave to a controller in a year, on the controller's own clock. */
export interface AllowedTimes {
  /** Days of the watering season within a program's dates, month by month. */
  readonly active: (dates: ProgramDates) => readonly (readonly CalendarDay[])[]
  readonly isAllowed: (day: EpochDay) => boolean
  readonly left: MinutesLeft
  /** The same for a pass that must be over by midnight, by the legal clock as by its own. */
  readonly leftOfDay: MinutesLeft
  /** Minutes by which the legal clock is ahead of the controller's, at the least and at the most. */
  readonly ahead: readonly [least: number, most: number]
  /** In 24 hours, s. */
  readonly allowedS: number
}

/** The same for all controllers under the same rules whose clocks go alike, worked out once. */
export function allowedTimesOf(site: Site, year: number): (controller: Controller) => AllowedTimes {
  const known = new Map<string, AllowedTimes>()
  return controller => {
    const rules = rulesFor(site, controller)
    const key = `${controller.clock?.daylightSaving} ${rules.map(rule => site.wateringRules.indexOf(rule)).join()}`
    const times = known.get(key) ?? timesUnder(rules, site, controller, year)
    known.set(key, times)
    return times
  }
}

/**
 * Start times hold all season, so a minute counts as allowed only where it is so on every allowed day of the season, by the legal clock, also
 * where the controller's clock is behind it in summer. Where rules limit the days, a pass must be over by legal midnight.
 */
function timesUnder(rules: readonly WateringRule[], site: Site, controller: Controller, year: number): AllowedTimes {
  const facts = ruleFacts(site)
  const days = daysOfYear(year).filter(day => isInSeason(day, site.season))
  const barredDay = barredTogether(rules, ['days'], facts)
  const isAllowed = (day: EpochDay) => barredDay(day).length === 0
  const barredHours = barredTogether(rules, ['window', 'not'], facts)
  const allowed = new Array<boolean>(DAY_MINUTES).fill(true)
  const offsets = new Set<number>()
  const seen = new Map<number, Set<Stretches>>()
  const offsetOn = minutesAhead(site, controller)
  for (const { day } of days) {
    if (!isAllowed(day)) continue
    const offset = offsetOn(day)
    offsets.add(offset)
    const known = seen.get(offset) ?? new Set<Stretches>()
    seen.set(offset, known)
    bar(allowed, barredHours(day), offset, known)
  }
  const daysLimited = rules.some(rule => (daysOfRule(rule, facts)?.kind ?? 'every-day') !== 'every-day')
  const stops = daysLimited ? [DAY_MINUTES] : []
  // By the legal clock these minutes are of the next day, which may not be allowed.
  if (daysLimited) allowed.fill(false, DAY_MINUTES - Math.max(0, ...offsets))
  const ahead: AllowedTimes['ahead'] = offsets.size === 0 ? [0, 0] : [Math.min(...offsets), Math.max(...offsets)]
  return {
    active: activeMonths(days),
    isAllowed,
    ahead,
    left: minutesLeft(allowed, stops),
    leftOfDay: minutesLeft(
      allowed.map((is, minute) => is && minute < DAY_MINUTES - Math.max(0, ...offsets)),
      [DAY_MINUTES]
    ),
    allowedS: allowed.filter(Boolean).length * 60
  }
}

/** Takes what is barred of the legal day out of the controller's own. */
function bar(allowed: boolean[], barred: Stretches, offset: number, known: Set<Stretches>): void {
  if (known.has(barred)) return
  known.add(barred)
  for (const [fromS, toS] of barred)
    for (let minute = Math.floor(fromS / 60); minute < toS / 60; minute += 1)
      allowed[(minute - offset + DAY_MINUTES) % DAY_MINUTES] = false
}

/** Minutes by which the legal clock is ahead of the controller's on a day. */
function minutesAhead(site: Site, controller: Controller): (day: EpochDay) => number {
  const timeZone = site.location?.timeZone
  if (controller.clock?.daylightSaving !== 'not followed' || timeZone === undefined) return () => 0
  return day => daylightMinutes(day, timeZone)
}

/** A rule that leaves the kind of all its devices free does not concern a controller. */
function rulesFor(site: Site, { id }: Controller) {
  const numbers = site.stations.filter(one => one.controller === id).map(one => one.number)
  return site.wateringRules.filter(rule => numbers.some(bindsStation(rule, site, id)))
}

/** Worked out once for each pair of dates. */
function activeMonths(days: readonly CalendarDay[]): AllowedTimes['active'] {
  const known = new Map<string, readonly (readonly CalendarDay[])[]>()
  return dates => {
    const key = `${dates.from ?? ''} ${dates.to ?? ''}`
    const months = known.get(key) ?? byMonth(days.filter(day => isInDates(day, dates)))
    known.set(key, months)
    return months
  }
}

function byMonth(days: readonly CalendarDay[]): readonly (readonly CalendarDay[])[] {
  const months = Array.from({ length: 12 }, (): CalendarDay[] => [])
  for (const day of days) months[day.month - 1]?.push(day)
  return months
}
