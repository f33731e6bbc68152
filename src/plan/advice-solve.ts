import { sortedBy } from '../base/collections.ts'
import type { ScheduledProgram } from '../domain/schedule/controller.ts'
import { isClear, isInHours, placeStart } from '../domain/schedule/place-starts.ts'
import type { MinutesLeft, PlaceOf, PlacedStart } from '../domain/schedule/place-starts.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { daysPerWeek } from '../domain/schedule/spacing.ts'
import { atMost } from '../domain/within.ts'
import { meetsAsSet } from './advice-as-set.ts'
import { daysUnmet, keptRule, rulesFor } from './advice-days.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { AdvisedProgram, UnmetPlan } from './advice-plan.ts'
import { keepsCapsOverMidnight } from './advice-caps.ts'
import { apartS, cycleInMonth, lengthS, programFor, startsMost } from './advice-program.ts'
import { startsLeft } from './advice-starts.ts'
import { atLevel, partsOf } from './advice-solve-of.ts'
import type { Choice, SolveOf } from './advice-solve-of.ts'
import { hoursUnmet, noneFits } from './advice-unmet.ts'

export type Solved =
  | { readonly programs: readonly AdvisedProgram[]; readonly placed: readonly PlacedStart[] }
  | { readonly unmet: UnmetPlan }

/** A way to run a group: its program without starts, and the starts to try. */
interface Variant {
  readonly program: ScheduledProgram
  readonly starts: number
  readonly isChanged: boolean
  /** True where the starts must stay as they are. */
  readonly asSetStarts: boolean
}

/**
 * Programs for all groups of a controller, as near to what is set as the rules, the ground and the hours let them be: as set where that
 * meets the need; else the same days; else days as many a week, then more or fewer. Where the night is too short, all groups water on more.
 */
export function solveAdvice(of: SolveOf): Solved {
  const near = placeAll(
    of.groups.map(group => ({ group, rules: keptRule(group, of) })),
    0,
    of,
    'none kept'
  )
  if (near) return near
  const choices = of.groups.map(group => ({ group, rules: rulesFor(group, of) }))
  for (const { group, rules } of choices) {
    if (rules.length === 0) return { unmet: daysUnmet(group, of) }
    const none = noneFits(group, rules, of)
    if (none) return { unmet: none }
  }
  const levels = [0, ...new Set(choices.flatMap(({ rules }) => rules.map(daysPerWeek)))].sort((a, b) => a - b)
  for (const level of levels) {
    const solved = placeAll(choices, level, of)
    if (solved) return solved
  }
  const { startsPerDay } = of.controller.sheet ?? {}
  if (startsPerDay !== undefined && of.groups.length > startsPerDay)
    return {
      unmet: { kind: 'starts-a-day', subject: of.controller.id, needed: of.groups.length, allowed: startsPerDay }
    }
  return { unmet: hoursUnmet(choices, of, level => placeAll(choices, level, { ...of, others: [] }) !== undefined) }
}

/** Of a controller that makes only so many starts in a day, one is kept for each program to come, unless all are to stay as set. */
function placeAll(
  choices: readonly Choice[],
  level: number,
  of: SolveOf,
  starts: 'none kept' | 'one kept' = 'one kept'
): Solved | undefined {
  const placed: PlacedStart[] = []
  const programs: AdvisedProgram[] = []
  for (const [index, { group, rules }] of choices.entries()) {
    const kept = starts === 'one kept' ? choices.length - index - 1 : 0
    const leftFor = (days: DayRule) => startsLeft({ ...group, days }, programs, kept, of)
    const found = placeGroup(group, atLevel(rules, level), level === 0, placed, { ...of, leftFor })
    if (!found) return undefined
    placed.push(...found.placed)
    programs.push(found.program)
  }
  return { programs, placed }
}

function placeGroup(
  group: AdviceGroup,
  rules: readonly DayRule[],
  mayStay: boolean,
  placed: readonly PlacedStart[],
  of: PlaceAllOf
): { readonly program: AdvisedProgram; readonly placed: readonly PlacedStart[] } | undefined {
  for (const variant of variantsOf(group, rules, mayStay, of)) {
    const starts = placeWithinCaps(variant, group, placed, of)
    if (!starts) continue
    const length = lengthS(variant.program, of.scheduled) / 60
    const times = starts.map(({ fromMinute }) => fromMinute)
    const program = {
      ...variant.program,
      starts: times,
      ends: times.map(minute => minute + length),
      isChanged: variant.isChanged || times.join() !== group.asSet.starts.join(),
      ...(group.name === undefined ? {} : { name: group.name }),
      ...(of.controller.sheet?.monthlyPercent === false ? { byMonthS: byMonthS(variant.program, of) } : {})
    }
    return { program, placed: starts }
  }
  return undefined
}

function byMonthS(program: ScheduledProgram, { scheduled }: SolveOf) {
  const months = Array.from({ length: 12 }, (_, at) => at + 1)
  return program.stations.map(one => months.map(month => cycleInMonth(one, program, month, scheduled.stepS)))
}

/** Where passes over midnight would give one day more than its cap, they are over by midnight. */
function placeWithinCaps(
  variant: Variant,
  group: AdviceGroup,
  placed: readonly PlacedStart[],
  of: SolveOf
): readonly PlacedStart[] | undefined {
  for (const left of [of.times.left, of.times.leftOfDay]) {
    const starts = placeStarts(variant, group, placed, { ...of, left })
    if (!starts) return undefined
    const program = { ...variant.program, starts: starts.map(({ fromMinute }) => fromMinute) }
    if (keepsCapsOverMidnight(program, group, of.scheduled, of.times.ahead)) return starts
  }
  return undefined
}

interface PlaceAllOf extends SolveOf {
  /** Starts a day that a program of such days may have. */
  readonly leftFor: (days: DayRule) => number
}

function* variantsOf(
  group: AdviceGroup,
  rules: readonly DayRule[],
  mayStay: boolean,
  of: PlaceAllOf
): Generator<Variant> {
  const most = startsMost(of.controller.sheet)
  const setStarts = group.asSet.starts.length
  if (mayStay && atMost(setStarts, of.leftFor(group.asSet.days)) && meetsAsSet(group, of)) {
    yield { program: group.asSet, starts: setStarts, isChanged: false, asSetStarts: true }
    yield { program: group.asSet, starts: setStarts, isChanged: false, asSetStarts: false }
  }
  const counts = [...new Set([Math.min(setStarts, most), 1, 2, 3, 4, ...inPlaceOfCycles(of)])]
  for (const rule of rules)
    for (const starts of counts.filter(count => count >= 1 && count <= Math.min(most, of.leftFor(rule)))) {
      const made = programFor(partsOf(group, rule, starts, of))
      if ('program' in made) yield { program: made.program, starts, isChanged: true, asSetStarts: false }
    }
}

/** More than four starts are of use only where they do for cycles. */
function inPlaceOfCycles({ controller: { sheet } }: SolveOf): readonly number[] {
  return sheet?.cycleSoak === false ? Array.from({ length: startsMost(sheet) }, (_, at) => at + 1) : []
}

function placeStarts(
  { program, starts, asSetStarts }: Variant,
  group: AdviceGroup,
  placed: readonly PlacedStart[],
  of: SolveOf & { readonly left: MinutesLeft }
): readonly PlacedStart[] | undefined {
  const { controller, times, supply, others, left } = of
  const lengthMinutes = lengthS(program, of.scheduled) / 60
  const { flowM3s } = group
  const isSplit = controller.sheet?.cycleSoak === false
  const restMinutes = isSplit ? apartS(group, program, lengthMinutes * 60) / 60 - lengthMinutes : 0
  const own: PlacedStart[] = []
  for (let index = 0; index < starts; index += 1) {
    const before = [...others, ...placed, ...own.map(one => rested(one, restMinutes))]
    const fixed = group.asSet.starts[index]
    const base = { controller: controller.id, days: program.days, flowM3s, ahead: times.ahead }
    if (asSetStarts && fixed !== undefined) {
      const start = { ...base, fromMinute: fixed, toMinute: fixed + lengthMinutes }
      if (!isInHours(start, left) || !isClear(start, before, supply)) return undefined
      own.push(start)
      continue
    }
    const wished = fixed === undefined ? group.asSet.starts : [fixed]
    const place: PlaceOf = { ...base, lengthMinutes, left, wished, placed: before, supply }
    const start = placeStart(place)
    if (!start) return undefined
    own.push(start)
  }
  return sortedBy(own, one => one.fromMinute)
}

/** With the soak before and after it, in which no other start of the program may fall. */
function rested(start: PlacedStart, minutes: number): PlacedStart {
  return { ...start, fromMinute: start.fromMinute - minutes, toMinute: start.toMinute + minutes }
}
