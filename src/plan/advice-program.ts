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
import { overCaps } from './advice-caps.ts'
import type { ZoneNeed } from './advice-need.ts'
import type { UnmetPlan } from './advice-plan.ts'

const MONTH_NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const

export interface ProgramOf {
  readonly controller: string
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
    if (need && runTime.cycles > 1 && of.sheet?.cycleSoak === false)
      return { unmet: cyclesUnmet(need, of, runTime.cycles) }
    stations.push({ number: asSet.number, runTime })
  }
  const monthlyPercent = percentsFor(stations, of, waterings)
  const { group, rule } = of
  const program: ScheduledProgram = {
    id: group.id,
    days: rule,
    starts: [],
    stations,
    monthlyPercent,
    ...(group.asSet.suspensions === undefined ? {} : { suspensions: group.asSet.suspensions }),
    ...(group.from === undefined ? {} : { from: group.from }),
    ...(group.to === undefined ? {} : { to: group.to })
  }
  const unmet = capPassed(program, of)
  return unmet ? { unmet } : { program }
}

/** The daily cap that a program would pass with so many starts a day. */
export function capPassed(program: ScheduledProgram, of: Omit<ProgramOf, 'rule'>): UnmetPlan | undefined {
  const { group, controller, starts, stepS } = of
  if (!group.entries.some(one => one.capsS)) return undefined
  const openS = program.stations.map(one =>
    MONTH_NUMBERS.map(month => cycleInMonth(one, program, month, stepS) * one.runTime.cycles * starts)
  )
  const subjects = group.entries.map(one => `${controller}/${one.asSet.number}`)
  return overCaps(group, openS, subjects, wateringsOf({ ...of, rule: program.days }))
}

/** Watering days of each month while the program is in force. */
function wateringsOf({ group, rule, active }: Pick<ProgramOf, 'group' | 'rule' | 'active'>): readonly number[] {
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
  // Cycles that the controller cannot be set to are not kept.
  const kept = asSet.runTime.cycles > 1 && sheet?.cycleSoak !== false
  return {
    longestCycle,
    soakS: kept ? Math.max(soakS, asSet.runTime.soakS) : soakS,
    leastS: sheet?.runTimeLeast?.si ?? 0,
    mostS: sheet?.runTimeMost?.si ?? Infinity,
    stepS,
    leastCycles: kept ? asSet.runTime.cycles : 1
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

/** Starts that would do for cycles. */
function cyclesUnmet({ station }: ZoneNeed, { starts, sheet }: ProgramOf, cycles: number): UnmetPlan {
  return { kind: 'cycle-starts', subject: station.id, needed: starts * cycles, allowed: startsMost(sheet) }
}

/**
 * How far apart two starts of a program must lie, s, where starts do for cycles: the pass must be over, and each station that would run off
 * must have had its soak.
 */
export function apartS({ entries }: AdviceGroup, program: ScheduledProgram, passS: number): number {
  const rested = entries.map(({ need }, index) =>
    need && need.longestCycle !== 'no limit' ? (program.stations[index]?.runTime.cycleS ?? 0) + need.soakS : 0
  )
  return Math.max(passS, ...rested)
}

export const startsMost = (sheet: ProductSheet | undefined): number =>
  Math.min(sheet?.startsPerProgram ?? 4, sheet?.startsPerDay ?? Infinity)

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
