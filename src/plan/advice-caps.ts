import { isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { isInSeason } from '../domain/schedule/active.ts'
import { daysOfYear } from '../domain/schedule/calendar-days.ts'
import type { ScheduledController, ScheduledProgram } from '../domain/schedule/controller.ts'
import { percentIn } from '../domain/schedule/controller.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { inForce } from '../domain/schedule/rules.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import { sequenceProgram } from '../domain/schedule/sequence.ts'
import { atMost } from '../domain/within.ts'
import type { Site, WateringRule } from '../model/site.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { UnmetPlan } from './advice-plan.ts'
import { bindsStation, ruleFacts } from './rule-facts.ts'

/** The most that a station may be open in a day, s, month by month, January first; Infinity where no rule says so. */
export type DailyCaps = readonly number[]

export interface CapsOf {
  readonly site: Site
  readonly controller: string
  readonly year: number
}

/**
 * The daily caps of the rules on a station. A rule in force on some days of a month caps the whole month, since a percent holds for a month.
 * A cap of depth needs the rate of the station; where that is not known it caps nothing. Undefined where no rule caps anything.
 */
export function dailyCaps({ site, controller, year }: CapsOf) {
  const rules = site.wateringRules.filter(one => one.atMost)
  if (rules.length === 0) return () => undefined
  const days = daysOfYear(year).filter(day => isInSeason(day, site.season))
  const monthsOf = new Map(
    rules.map(rule => {
      const isInForce = inForce(rule, ruleFacts(site))
      return [rule, new Set(days.flatMap(({ day, month }) => (isInForce(day) ? [month] : [])))] as const
    })
  )
  return (station: number, rateMPerS: Maybe<number>): DailyCaps | undefined => {
    const own = rules.filter(rule => bindsStation(rule, site, controller)(station))
    if (own.length === 0) return undefined
    return Array.from({ length: 12 }, (_, index) =>
      Math.min(
        Infinity,
        ...own.map(rule => (monthsOf.get(rule)?.has(index + 1) === true ? capS(rule, rateMPerS) : Infinity))
      )
    )
  }
}

function capS({ atMost: cap }: WateringRule, rateMPerS: Maybe<number>): number {
  if (!cap) return Infinity
  if (cap.dimension === 'duration') return cap.si
  return isAbsent(rateMPerS) || rateMPerS <= 0 ? Infinity : cap.si / rateMPerS
}

/** The station that a day gives the most beyond its cap, with so many starts of a program in it; undefined where none is over. */
export function overCaps(
  { entries }: AdviceGroup,
  cyclesS: readonly (readonly number[])[],
  subjects: readonly string[],
  waterings: readonly number[]
): UnmetPlan | undefined {
  let worst: (UnmetPlan & { readonly kind: 'daily-cap' }) | undefined
  for (const [index, { capsS }] of entries.entries())
    for (const [month, allowed] of (capsS ?? []).entries()) {
      const needed = cyclesS[index]?.[month] ?? 0
      if ((waterings[month] ?? 0) === 0 || atMost(needed, allowed)) continue
      if (worst && needed / allowed <= worst.needed / worst.allowed) continue
      worst = { kind: 'daily-cap', subject: subjects[index] ?? '', month: month + 1, needed, allowed }
    }
  return worst
}

type Timed = Pick<ScheduledController, 'stepS' | 'delayS'>

/**
 * True where no calendar day gets more than its cap although passes run over midnight: the end of one pass and the head of the next then fall
 * on one day, also at the turn of a month where the percents differ. `ahead` is the clock of the place against the controller's, minutes.
 */
export function keepsCapsOverMidnight(
  program: ScheduledProgram,
  { entries }: AdviceGroup,
  timed: Timed,
  ahead: readonly number[]
): boolean {
  const capped = entries.filter(one => one.capsS)
  if (capped.length === 0 || !runsOnNeighbors(program.days)) return true
  return [...new Set(ahead)].every(offset => {
    const months = Array.from({ length: 12 }, (_, index) => openByDay(program, index + 1, offset * 60, timed))
    return capped.every(({ asSet: { number }, capsS = [] }) =>
      months.every((own, index) => {
        const before = [own, months[(index + 11) % 12]]
        const most = Math.max(...before.map(one => one?.get(number)?.[1] ?? 0)) + (own.get(number)?.[0] ?? 0)
        return atMost(most, capsS[index] ?? Infinity)
      })
    )
  })
}

/** Seconds by station, on the day of the start and on the next. */
function openByDay(program: ScheduledProgram, month: number, offsetS: number, { stepS, delayS }: Timed) {
  const open = new Map<number, [own: number, next: number]>()
  const timed = sequenceProgram(program.stations, { percent: percentIn(program, month), stepS, delayS })
  for (const start of program.starts)
    for (const { station, startS, durationS } of timed) {
      const from = start * 60 + offsetS + startS
      const [own, next] = open.get(station) ?? [0, 0]
      const onNext = Math.min(durationS, Math.max(0, from + durationS - DAY_S))
      open.set(station, [own + durationS - onNext, next + onNext])
    }
  return open
}

function runsOnNeighbors(rule: DayRule): boolean {
  if (rule.kind === 'weekdays') return rule.days.some(day => rule.days.includes((day % 7) + 1))
  return rule.kind === 'every-day' || (rule.kind === 'odd-dates' && rule.withTurnover)
}
