import { absent } from '../../base/absent.ts'
import { roundedText, show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { numberOf, optionalNumber, textOf } from '../inputs.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { adjustedCycleS } from './adjust.ts'
import { DEFAULT_STEP_S } from './controller.ts'
import type { RunTime } from './program.ts'
import { runTimeProblem } from './stations-text.ts'
import { parseRunTime } from './text.ts'

export interface MonthlySetting {
  readonly runTime: RunTime
  /** Fraction. */
  readonly percent: number
  readonly stepS: number
  /** Start times on a watering day. */
  readonly starts: number
  readonly days: number
  readonly flowM3s?: number | undefined
}

export interface MonthlyMinutes {
  readonly cycleS: number
  readonly minutesPerDay: number
  readonly minutes: number
  readonly volumeM3?: number
}

/** What one station gets in a month: cycle at the month's percent × cycles × starts × watering days. */
export function monthlyMinutes(setting: MonthlySetting): MonthlyMinutes {
  const { runTime, percent, stepS, starts, days, flowM3s } = setting
  const cycleS = adjustedCycleS(runTime.cycleS, percent, stepS)
  const minutesPerDay = (cycleS * runTime.cycles * starts) / 60
  const minutes = minutesPerDay * days
  const water = { cycleS, minutesPerDay, minutes }
  return flowM3s === undefined ? water : { ...water, volumeM3: minutes * 60 * flowM3s }
}

/** The same with its arithmetic in words. */
export function monthlyMinutesWorked(setting: MonthlySetting, system: UnitSystem): Worked<MonthlyMinutes> {
  const value = monthlyMinutes(setting)
  const { runTime, percent, stepS, starts, days, flowM3s } = setting
  const minutes = (seconds: number) => show(seconds, 'minutes', system)
  const cycle = `${minutes(runTime.cycleS)} × ${show(percent, 'percent', system)} = ${minutes(value.cycleS)}`
  const steps = [
    percent === 1 ? `Cycle as written: ${minutes(value.cycleS)}.` : `Cycle: ${cycle}, in steps of ${minutes(stepS)}.`,
    `On a watering day: ${minutes(value.cycleS)} × ${runTime.cycles} (cycles) × ${starts} (starts) = ${minutes(value.minutesPerDay * 60)}.`,
    `In the month: ${minutes(value.minutesPerDay * 60)} × ${roundedText(days, 2)} days = ${minutes(value.minutes * 60)}.`
  ]
  if (flowM3s === undefined || value.volumeM3 === undefined) return { value, steps }
  const volume = `${minutes(value.minutes * 60)} × ${show(flowM3s, 'flow', system)} = ${show(value.volumeM3, 'volume', system)}`
  return { value, steps: [...steps, `Water: ${volume}.`] }
}

export const monthlyMinutesCard: Calculation = {
  name: 'monthly-minutes',
  title: 'Minutes and water of a station in a month',
  does: 'How long a station is open on a watering day and in a month at its monthly percent, and how much water that is.',
  inputs: {
    'run-time': { kind: { is: 'text' }, does: 'Run time at 100 %, 25 min or 2 x 6 min soak 30 min' },
    days: { kind: { is: 'number' }, does: 'Watering days in the month' },
    percent: { kind: { is: 'quantity', dimension: 'ratio' }, does: 'Monthly percent', optional: '100 %' },
    starts: { kind: { is: 'count' }, does: 'Start times on a watering day', optional: 'one' },
    step: {
      kind: { is: 'quantity', dimension: 'duration' },
      does: 'Run-time step of the controller',
      optional: '1 min'
    },
    flow: { kind: { is: 'quantity', dimension: 'flow' }, does: 'Flow of the station', optional: 'no volume is given' }
  },
  outputs: {
    'per-day': { does: 'Open valve on a watering day', unit: 'min' },
    minutes: { does: 'Open valve in the month', unit: 'min' },
    volume: { does: 'Water in the month, where the flow is given', unit: 'm³' }
  },
  sources: ['project-rule', 'common-practice'],
  limits:
    'The percent multiplies each cycle, which is then rounded to the step, half a step up; a cycle that comes to nothing does not run. The soak stays as written. The step of 1 min is common practice, no source.',
  run: inputs => {
    const runTime = parseRunTime(textOf(inputs, 'run-time'))
    if (!runTime.ok) return absent(`The run time: ${runTimeProblem(runTime.problem)}`)
    const stepS = optionalNumber(inputs, 'step') ?? DEFAULT_STEP_S
    if (stepS <= 0) return absent('The run-time step must be more than nothing: write 1 min.')
    const percent = optionalNumber(inputs, 'percent') ?? 1
    const starts = optionalNumber(inputs, 'starts') ?? 1
    const flowM3s = optionalNumber(inputs, 'flow')
    const setting = { runTime: runTime.value, percent, stepS, starts, days: numberOf(inputs, 'days'), flowM3s }
    const { value, steps } = monthlyMinutesWorked(setting, 'metric')
    const { minutesPerDay, minutes, volumeM3 } = value
    const outputs = { 'per-day': minutesPerDay, minutes }
    return { value: volumeM3 === undefined ? outputs : { ...outputs, volume: volumeM3 }, steps }
  },
  example: {
    inputs: { 'run-time': '2 x 6 min soak 30 min', days: '15', percent: '70 %', flow: '38 L/min' },
    outputs: { 'per-day': 8, minutes: 120, volume: 4.56 }
  }
}
