import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { adjustedCycleS } from '../domain/schedule/adjust.ts'
import { percentIn } from '../domain/schedule/controller.ts'
import type { ScheduledController, ScheduledProgram, StationEntry } from '../domain/schedule/controller.ts'
import { daysByRule } from '../domain/schedule/days-in-month.ts'
import type { CalendarDay } from '../domain/schedule/calendar-days.ts'
import type { DayRule, RunTime } from '../domain/schedule/program.ts'
import { sequenceEndS, sequenceProgram } from '../domain/schedule/sequence.ts'
import { longestGapDays } from '../domain/schedule/spacing.ts'
import { advisedPercent, advisedRun } from '../domain/water/advise.ts'
import { longestIntervalDays } from '../domain/water/soil-reservoir.ts'
import { wholeUp } from '../domain/water/whole-up.ts'
import { atMost } from '../domain/within.ts'
import type { ProductSheet } from '../model/site.ts'
import type { AdviceEntry, AdviceGroup } from './advice-groups.ts'
import type { ZoneNeed } from './advice-need.ts'
import type { UnmetPlan } from './advice-plan.ts'

const MONTH_NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const

export interface ProgramOf {
  readonly group: AdviceGroup
  readonly rule: DayRule
  /** Start times a day. */
  readonly starts: number
  /** Days of the season on which a group is in force, month by month. */
  readonly active: (group: AdviceGroup) => readonly (readonly CalendarDay[])[]
  readonly sheet: ProductSheet | undefined
  readonly stepS: number
}

/** The program of a group without its start times, or the limit that it would pass. */
export function programFor(of: ProgramOf): { readonly program: ScheduledProgram } | { readonly unmet: UnmetPlan } {
  const waterings = wateringsOf(of)
  const stations: StationEntry[] = []
  for (const entry of of.group.entries) {
    const { need, asSet } = entry
    const unmet = need && passed(need, of, waterings)
    if (unmet) return { unmet }
    const runTime = need ? runTimeFor(entry, need, of, waterings) : asSet.runTime
    if (isAbsent(runTime)) return { unmet: intakeUnmet(need as ZoneNeed, of) }
    stations.push({ number: asSet.number, runTime })
  }
  const monthlyPercent = percentsFor(stations, of, waterings)
  const { group, rule } = of
  return {
    program: {
      id: group.id,
      days: rule,
      starts: [],
      stations,
      monthlyPercent,
      ...(group.asSet.suspensions === undefined ? {} : { suspensions: group.asSet.suspensions }),
      ...(group.from === undefined ? {} : { from: group.from }),
      ...(group.to === undefined ? {} : { to: group.to })
    }
  }
}

/** Watering days of each month while the program is in force. */
function wateringsOf({ group, rule, active }: ProgramOf): readonly number[] {
  return active(group).map(days => daysByRule(rule, days))
}

/** Open valve wanted at one start of each month, s, before it is rounded. */
function wantedS({ applyM, rateMPerS }: ZoneNeed, starts: number, waterings: readonly number[]): readonly number[] {
  return applyM.map((depth, index) => {
    const events = waterings[index] ?? 0
    return events > 0 ? depth / rateMPerS / events / starts : 0
  })
}

/**
 * What of the root zone a watering or an interval would pass. Of a texture the most that it may hold counts for days that are kept, and what
 * it surely holds for others: a guess at the soil is no reason to change what works.
 */
function passed(need: ZoneNeed, of: ProgramOf, waterings: readonly number[]): UnmetPlan | undefined {
  const { holds, station, rateMPerS } = need
  if (!holds) return undefined
  const holdsM = of.rule === of.group.asSet.days ? holds.mostM : holds.sureM
  // More starts in a night than are set are there for the hours' sake: the ground takes them for one watering.
  const wanted = wantedS(need, Math.min(of.starts, of.group.asSet.starts.length), waterings)
  const mostS = Math.max(...wanted)
  const month = wanted.indexOf(mostS) + 1
  const neededM = mostS * rateMPerS
  if (!atMost(neededM, holdsM))
    return { kind: 'reservoir', subject: station.id, month, needed: neededM, allowed: holdsM }
  const perDay = (need.needM[month - 1] ?? 0) / activeDays(of, month)
  const longest = longestIntervalDays(holdsM, perDay)
  const gap = longestGapDays(of.rule)
  if (isAbsent(longest) || gap <= Math.max(1, longest)) return undefined
  return { kind: 'interval', subject: station.id, month, needed: gap, allowed: longest }
}

function activeDays({ active, group }: ProgramOf, month: number): number {
  return active(group)[month - 1]?.length || 30
}

function limitsOf({ asSet }: AdviceEntry, { longestCycle, soakS }: ZoneNeed, { sheet, stepS }: ProgramOf) {
  const kept = asSet.runTime.cycles > 1
  return {
    longestCycle,
    soakS: kept ? Math.max(soakS, asSet.runTime.soakS) : soakS,
    leastS: sheet?.runTimeLeast?.si ?? 0,
    mostS: sheet?.runTimeMost?.si ?? Infinity,
    stepS,
    leastCycles: asSet.runTime.cycles
  }
}

function runTimeFor(entry: AdviceEntry, need: ZoneNeed, of: ProgramOf, waterings: readonly number[]): Maybe<RunTime> {
  const most = Math.max(...wantedS(need, of.starts, waterings))
  return most > 0 ? advisedRun(most, limitsOf(entry, need, of)) : absent('nothing is needed on the days of the program')
}

function intakeUnmet({ station, longestCycle }: ZoneNeed, { sheet, stepS }: ProgramOf): UnmetPlan {
  const shortest = Math.max(wholeUp(sheet?.runTimeLeast?.si ?? 0, stepS), stepS)
  const allowed = longestCycle === 'no limit' ? 0 : longestCycle
  return { kind: 'intake', subject: station.id, needed: shortest, allowed }
}

/** For each month the percent at which no judged station falls short; as set where none is judged. */
function percentsFor(stations: readonly StationEntry[], of: ProgramOf, waterings: readonly number[]) {
  const { group, stepS, sheet, starts } = of
  const least = sheet?.runTimeLeast?.si ?? 0
  const judged = group.entries.flatMap(({ need }, index) => {
    const runTime = stations[index]?.runTime
    return need && runTime ? [{ runTime, wanted: wantedS(need, starts, waterings) }] : []
  })
  return MONTH_NUMBERS.map((month, index) => {
    if (judged.length === 0) return percentIn(group.asSet, month)
    const cycles = judged.map(({ runTime: { cycles: count, cycleS }, wanted }) => {
      const seconds = wanted[index] ?? 0
      return { cycleS, neededS: seconds > 0 ? Math.max(wholeUp(seconds / count, stepS), least) : 0 }
    })
    return advisedPercent(cycles, stepS)
  })
}

/** From a start to the last closing, s, in the month in which that takes longest. */
export function lengthS(program: ScheduledProgram, { stepS, delayS }: Pick<ScheduledController, 'stepS' | 'delayS'>) {
  const percents = new Set(MONTH_NUMBERS.map(month => percentIn(program, month)))
  return Math.max(
    ...[...percents].map(percent => sequenceEndS(sequenceProgram(program.stations, { percent, stepS, delayS })))
  )
}

/** What a cycle comes to in a month. */
export function cycleInMonth({ runTime }: StationEntry, program: ScheduledProgram, month: number, stepS: number) {
  return adjustedCycleS(runTime.cycleS, percentIn(program, month), stepS)
}
