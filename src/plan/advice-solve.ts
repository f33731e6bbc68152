import type { ScheduledController, ScheduledProgram } from '../domain/schedule/controller.ts'
import { canBeSet, dayChoices, firstBarred } from '../domain/schedule/day-choices.ts'
import type { DayKind } from '../domain/schedule/day-choices.ts'
import { isClear, isInHours, placeStart } from '../domain/schedule/place-starts.ts'
import type { PlaceOf, PlacedStart, SharedSupply } from '../domain/schedule/place-starts.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { daysPerWeek, weekdaysOf } from '../domain/schedule/spacing.ts'
import { sortedBy } from '../base/collections.ts'
import { atLeast, atMost } from '../domain/within.ts'
import type { Controller, ProductSheet } from '../model/site.ts'
import { DAY_MINUTES } from '../units/clock.ts'
import { date, epochDay, fromEpochDay } from '../units/date.ts'
import { cycleInMonth, lengthS, programFor } from './advice-program.ts'
import type { ProgramOf } from './advice-program.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { AdvisedProgram, UnmetPlan } from './advice-plan.ts'
import type { AllowedTimes } from './advice-rules.ts'
import { writeDayRule } from '../domain/schedule/text.ts'

export interface SolveOf {
  readonly controller: Controller
  readonly scheduled: ScheduledController
  readonly groups: readonly AdviceGroup[]
  readonly times: AllowedTimes
  readonly year: number
  readonly kinds: readonly DayKind[]
  readonly supply: SharedSupply
  /** Starts of other controllers on the same supply. */
  readonly others: readonly PlacedStart[]
}

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

interface Choice {
  readonly group: AdviceGroup
  readonly rules: readonly DayRule[]
}

/**
 * Programs for all groups of a controller, as near to what is set as the rules, the ground and the hours let them be: as set where that
 * meets the need; else the same days; else days as many a week, then more or fewer. Where the night is too short, all groups water on more.
 */
export function solveAdvice(of: SolveOf): Solved {
  const near = placeAll(
    of.groups.map(group => ({ group, rules: keptRule(group, of) })),
    0,
    of
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
  return { unmet: hoursUnmet(choices, of) }
}

const startsMost = (sheet: ProductSheet | undefined): number => sheet?.startsPerProgram ?? 4

/** The days as set, where the controller can be set to them and they keep to the days allowed. */
function keptRule(group: AdviceGroup, { times, kinds }: SolveOf): readonly DayRule[] {
  const own = group.asSet.days
  return canBeSet(own, kinds) && firstBarred(own, allowedDays(group, times)) === undefined ? [own] : []
}

function allowedDays(group: AdviceGroup, { active, isAllowed }: AllowedTimes) {
  return { days: active(group).flatMap(month => month.map(({ day }) => day)), isAllowed }
}

/** Day rules that keep to the days allowed, the one as set first, then those of its kind, the nearest to it first, then others. */
function rulesFor(group: AdviceGroup, of: SolveOf): readonly DayRule[] {
  const { times, kinds, year } = of
  const allowed = allowedDays(group, times)
  const first = allowed.days.find(times.isAllowed) ?? epochDay(date(`${year}-01-01`))
  const own = group.asSet.days
  const usual = daysPerWeek(own)
  const near = sortedBy(
    dayChoices({ ...allowed, kinds, from: fromEpochDay(first) }).filter(
      rule => writeDayRule(rule) !== writeDayRule(own)
    ),
    rule => (rule.kind === own.kind ? 0 : 1),
    rule => Math.abs(daysPerWeek(rule) - usual)
  )
  return [...keptRule(group, of), ...near]
}

function placeAll(choices: readonly Choice[], level: number, of: SolveOf): Solved | undefined {
  const placed: PlacedStart[] = []
  const programs: AdvisedProgram[] = []
  for (const { group, rules } of choices) {
    const found = placeGroup(group, atLevel(rules, level), level === 0, placed, of)
    if (!found) return undefined
    placed.push(...found.placed)
    programs.push(found.program)
  }
  return { programs, placed }
}

/** Rules with so many waterings a week or more; those with most where none has as many. */
function atLevel(rules: readonly DayRule[], level: number): readonly DayRule[] {
  const most = Math.max(...rules.map(daysPerWeek))
  return rules.filter(rule => daysPerWeek(rule) >= Math.min(level, most))
}

function placeGroup(
  group: AdviceGroup,
  rules: readonly DayRule[],
  mayStay: boolean,
  placed: readonly PlacedStart[],
  of: SolveOf
): { readonly program: AdvisedProgram; readonly placed: readonly PlacedStart[] } | undefined {
  for (const variant of variantsOf(group, rules, mayStay, of)) {
    const starts = placeStarts(variant, group, placed, of)
    if (!starts) continue
    const length = lengthS(variant.program, of.scheduled) / 60
    const times = starts.map(({ fromMinute }) => fromMinute)
    const program = {
      ...variant.program,
      starts: times,
      ends: times.map(minute => minute + length),
      isChanged: variant.isChanged || times.join() !== group.asSet.starts.join(),
      ...(group.name === undefined ? {} : { name: group.name })
    }
    return { program, placed: starts }
  }
  return undefined
}

function* variantsOf(group: AdviceGroup, rules: readonly DayRule[], mayStay: boolean, of: SolveOf): Generator<Variant> {
  const most = startsMost(of.controller.sheet)
  const setStarts = group.asSet.starts.length
  if (mayStay && meetsAsSet(group, of)) {
    yield { program: group.asSet, starts: setStarts, isChanged: false, asSetStarts: true }
    yield { program: group.asSet, starts: setStarts, isChanged: false, asSetStarts: false }
  }
  const counts = [...new Set([Math.min(setStarts, most), 1, 2, 3, 4])].filter(count => count >= 1 && count <= most)
  for (const rule of rules)
    for (const starts of counts) {
      const made = programFor(partsOf(group, rule, starts, of))
      if ('program' in made) yield { program: made.program, starts, isChanged: true, asSetStarts: false }
    }
}

function partsOf(group: AdviceGroup, rule: DayRule, starts: number, of: SolveOf): ProgramOf {
  const { times, controller, scheduled } = of
  return { group, rule, starts, active: times.active, sheet: controller.sheet, stepS: scheduled.stepS }
}

function placeStarts(
  { program, starts, asSetStarts }: Variant,
  group: AdviceGroup,
  placed: readonly PlacedStart[],
  of: SolveOf
): readonly PlacedStart[] | undefined {
  const { controller, times, supply, others } = of
  const lengthMinutes = lengthS(program, of.scheduled) / 60
  const { flowM3s } = group
  const own: PlacedStart[] = []
  for (let index = 0; index < starts; index += 1) {
    const before = [...others, ...placed, ...own]
    const fixed = group.asSet.starts[index]
    const base = { controller: controller.id, days: program.days, flowM3s, ahead: times.ahead }
    if (asSetStarts && fixed !== undefined) {
      const start = { ...base, fromMinute: fixed, toMinute: fixed + lengthMinutes }
      if (!isInHours(start, times.left) || !isClear(start, before, supply)) return undefined
      own.push(start)
      continue
    }
    const wished = fixed === undefined ? group.asSet.starts : [fixed]
    const place: PlaceOf = { ...base, lengthMinutes, left: times.left, wished, placed: before, supply }
    const start = placeStart(place)
    if (!start) return undefined
    own.push(start)
  }
  return sortedBy(own, one => one.fromMinute)
}

/** Within a tenth or a step of the need in every month, and inside every limit. */
function meetsAsSet(group: AdviceGroup, of: SolveOf): boolean {
  const { asSet } = group
  const { controller, scheduled } = of
  if (keptRule(group, of).length === 0) return false
  if (asSet.starts.length > startsMost(controller.sheet)) return false
  const made = programFor(partsOf(group, asSet.days, asSet.starts.length, of))
  if (!('program' in made)) return false
  const { program } = made
  return group.entries.every(({ asSet: entry, need }, index) => {
    const wanted = program.stations[index]
    if (!need || !wanted) return true
    if (need.longestCycle !== 'no limit' && !atMost(entry.runTime.cycleS, need.longestCycle)) return false
    return Array.from({ length: 12 }, (_, at) => at + 1).every(month => {
      const set = cycleInMonth(entry, asSet, month, scheduled.stepS) * entry.runTime.cycles
      const right = cycleInMonth(wanted, program, month, scheduled.stepS) * wanted.runTime.cycles
      const room = Math.max(scheduled.stepS * wanted.runTime.cycles, right * TOLERANCE)
      return (
        atLeast(set, right - room) &&
        atMost(set, right + room) &&
        isSettable(entry.runTime.cycleS, controller.sheet, scheduled.stepS)
      )
    })
  })
}

/** A tenth: what is known of plants, soil and weather is not known more closely. Rule of the project. */
const TOLERANCE = 0.1

function isSettable(cycleS: number, sheet: ProductSheet | undefined, stepS: number): boolean {
  const steps = cycleS / stepS
  return (
    Math.abs(steps - Math.round(steps)) < 1e-6 &&
    atLeast(cycleS, sheet?.runTimeLeast?.si ?? 0) &&
    atMost(cycleS, sheet?.runTimeMost?.si ?? Infinity)
  )
}

function daysUnmet(group: AdviceGroup, { times, kinds, controller }: SolveOf): UnmetPlan {
  const allowed = allowedDays(group, times)
  const from = allowed.days.find(times.isAllowed) ?? 0
  const tried = [group.asSet.days, { kind: 'every-n-days' as const, every: 2, from: fromEpochDay(from) }].filter(rule =>
    canBeSet(rule, kinds)
  )
  const firsts = tried.flatMap(rule => {
    const first = firstBarred(rule, allowed)
    return first === undefined ? [] : [{ rule: writeDayRule(rule), first }]
  })
  const best = sortedBy(firsts, one => -one.first)[0]
  return {
    kind: 'days',
    subject: controller.id,
    rule: best?.rule ?? writeDayRule(group.asSet.days),
    ...(best ? { first: fromEpochDay(best.first) } : {})
  }
}

/** What stands in the way of every rule; the one that is passed by least is told. */
function noneFits(group: AdviceGroup, rules: readonly DayRule[], of: SolveOf): UnmetPlan | undefined {
  if (meetsAsSet(group, of)) return undefined
  const starts = Math.min(group.asSet.starts.length || 1, startsMost(of.controller.sheet))
  const made = rules.map(rule => programFor(partsOf(group, rule, starts, of)))
  if (made.some(one => 'program' in one)) return undefined
  const unmet = made.flatMap(one => ('unmet' in one && 'needed' in one.unmet ? [one.unmet] : []))
  return sortedBy(unmet, one => one.needed / one.allowed)[0]
}

/** The fullest night against the hours, at the days that leave it shortest; where the sum would fit, the last pass against what is free. */
function hoursUnmet(choices: readonly Choice[], of: SolveOf): UnmetPlan {
  const levels = [...new Set(choices.flatMap(({ rules }) => rules.map(daysPerWeek)))]
  const nights = levels.map(level => fullestNight(choices, level, of))
  const least = Math.min(...nights)
  const { controller, times } = of
  const longest = Math.max(...times.left) * 60
  if (!atMost(least, times.allowedS))
    return { kind: 'hours', subject: controller.id, needed: least, allowed: times.allowedS, onEnd: false }
  const alone = levels.some(level => placeAll(choices, level, { ...of, others: [] }) !== undefined)
  if (!alone) return { kind: 'hours', subject: controller.id, needed: least, allowed: longest, onEnd: true }
  return { kind: 'supply', subject: controller.id, needed: least, allowed: Math.min(least, freeBeside(of)) }
}

function fullestNight(choices: readonly Choice[], level: number, of: SolveOf): number {
  const nights = new Array<number>(7).fill(0)
  for (const { group, rules } of choices) {
    const [rule] = atLevel(rules, level)
    const made = rule && programFor(partsOf(group, rule, 1, of))
    const program = made && 'program' in made ? made.program : group.asSet
    for (const day of weekdaysOf(program.days))
      nights[day - 1] = (nights[day - 1] ?? 0) + lengthS(program, of.scheduled)
  }
  return Math.max(...nights)
}

/** The longest pass, s, that would still find room beside the others on the supply, every day. */
function freeBeside({ controller, groups, times, supply, others }: SolveOf): number {
  const flowM3s = Math.max(...groups.map(one => one.flowM3s))
  const place = (lengthMinutes: number) =>
    placeStart({
      controller: controller.id,
      days: { kind: 'every-day' },
      lengthMinutes,
      flowM3s,
      ahead: times.ahead,
      left: times.left,
      wished: [],
      placed: others,
      supply
    })
  let minutes = DAY_MINUTES
  while (minutes > 0 && !place(minutes)) minutes -= 5
  return Math.max(0, minutes) * 60
}
