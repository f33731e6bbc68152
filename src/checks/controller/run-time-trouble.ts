import { sortedBy } from '../../base/collections.ts'
import { adjustedCycleS } from '../../domain/schedule/adjust.ts'
import { DEFAULT_STEP_S } from '../../domain/schedule/controller.ts'
import { atLeast, atMost } from '../../domain/within.ts'
import type { ProductSheet, ProgramStation } from '../../model/site.ts'
import type { StationMonths } from '../../plan/plan.ts'
import { MONTHS } from '../../units/date.ts'
import type { Quantity } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'

/** A run time that a unit cannot be set to, or cannot give in some month. */
export interface RunTimeTrouble {
  readonly text: string
  readonly fix: string
  readonly seconds: number
  readonly limit: Quantity
  readonly month?: string
}

/** Past an end of what the sheet allows, or between two of its steps. */
export function asWritten({ runTime }: ProgramStation, sheet: ProductSheet): RunTimeTrouble | undefined {
  const { runTimeStep: step } = sheet
  const seconds = runTime.cycleS
  const end = pastAnEnd(seconds, sheet)
  if (end) return { ...end, text: `${minutes(seconds)} is ${end.text}`, seconds }
  if (!step || !(step.si > 0)) return undefined
  const steps = seconds / step.si
  if (Math.abs(steps - Math.round(steps)) < 1e-6) return undefined
  const below = Math.floor(steps) * step.si
  return {
    text: `${minutes(seconds)} is between two steps of ${showStated(step)}`,
    fix: below > 0 ? `Use ${minutes(below)} or ${minutes(below + step.si)}.` : `Use ${minutes(step.si)}.`,
    seconds,
    limit: step
  }
}

/** A monthly percent may bring a run time that can be set to one that the unit cannot give. The month that is furthest off counts. */
export function inSomeMonth(
  { runTime }: ProgramStation,
  row: StationMonths,
  sheet: ProductSheet
): RunTimeTrouble | undefined {
  const step = sheet.runTimeStep?.si ?? DEFAULT_STEP_S
  const wet = row.percent.flatMap((percent, index) =>
    percent > 0 && (row.days[index] ?? 0) > 0 ? [{ percent, month: MONTHS[index] ?? '' }] : []
  )
  const sides = [...sortedBy(wet, one => one.percent).slice(0, 1), ...sortedBy(wet, one => -one.percent).slice(0, 1)]
  for (const { percent, month } of sides) {
    const end = pastAnEnd(adjustedCycleS(runTime.cycleS, percent, step > 0 ? step : DEFAULT_STEP_S), sheet)
    if (!end) continue
    const seconds = runTime.cycleS * percent
    const enough = (end.limit.si / runTime.cycleS) * 100
    const [bound, round] = percent < 1 ? (['more', Math.ceil] as const) : (['less', Math.floor] as const)
    return {
      ...end,
      text: `${minutes(runTime.cycleS)} at ${roundedText(percent * 100, 0)}\u00a0% in ${month} is ${minutes(seconds)}, ${end.text}`,
      fix: `Use ${round(enough)}\u00a0% or ${bound}, with ${percent < 1 ? 'fewer' : 'more'} watering days, or another run time.`,
      seconds,
      month
    }
  }
  return undefined
}

function pastAnEnd(
  seconds: number,
  { runTimeLeast: least, runTimeMost: most }: ProductSheet
): Pick<RunTimeTrouble, 'text' | 'fix' | 'limit'> | undefined {
  if (least && !atLeast(seconds, least.si))
    return {
      text: `below the shortest run time, ${showStated(least)}`,
      fix: `Use ${showStated(least)} or more.`,
      limit: least
    }
  if (most && !atMost(seconds, most.si))
    return {
      text: `above the longest run time, ${showStated(most)}`,
      fix: `Use cycles of ${showStated(most)} or less.`,
      limit: most
    }
  return undefined
}

function minutes(seconds: number): string {
  const whole = Math.abs(seconds / 60 - Math.round(seconds / 60)) < 1e-6
  return whole || seconds > 600 ? `${roundedText(seconds / 60, 2)}\u00a0min` : `${roundedText(seconds, 1)}\u00a0s`
}
