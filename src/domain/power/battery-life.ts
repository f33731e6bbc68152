import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COLD_FACTOR, SELF_DISCHARGE_BASE_C } from '../../reference/batteries.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs, OutputValue, Worked } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { optionalNumber } from '../inputs.ts'
import { YEAR_DAYS, curvedLifeDays, lifeDays, pulseLifeDays } from './life.ts'
import { selfDischargeAt } from './self-discharge.ts'

const COULOMB_PER_MAH = 3.6

/** "8000 pulses / 48 pulses a day = 166 whole days". */
export function pulseLifeStep(ratedPulses: number, pulsesPerDay: number): string {
  const days = pulseLifeDays(ratedPulses, pulsesPerDay)
  return `${figures(ratedPulses, 6)} pulses / ${figures(pulsesPerDay, 4)} pulses a day = ${days} whole days`
}

const charge = { is: 'quantity', dimension: 'charge' } as const
const ratio = { is: 'quantity', dimension: 'ratio' } as const

export const batteryLife: Calculation = {
  name: 'battery-life',
  title: 'Life of a battery set',
  does: 'Gives the days a set lasts, from its capacity and what is drawn, or from the number of pulses that the product sheet states; given both, the shorter.',
  inputs: {
    capacity: { kind: charge, does: 'capacity of the set, under a load like this one', optional: 'pulses alone' },
    usable: { kind: ratio, does: 'part of the capacity that counts; 70 % is a common allowance', optional: '100 %' },
    standing: {
      kind: { is: 'quantity', dimension: 'current' },
      does: 'current drawn all the time',
      optional: 'none'
    },
    'pulses-per-day': {
      kind: { is: 'number' },
      does: 'pulses in a day, one to open and one to close',
      optional: 'none'
    },
    'pulse-charge': { kind: charge, does: 'charge that one pulse takes', optional: 'none' },
    'self-discharge': { kind: ratio, does: 'part of the full capacity lost in a year at 25 °C', optional: 'none' },
    temperature: {
      kind: { is: 'quantity', dimension: 'temperature' },
      does: 'temperature of the box; heat above 25 °C adds to the self-discharge, and below 0 °C the capacity is halved',
      optional: 'the self-discharge holds as given'
    },
    'rated-pulses': {
      kind: { is: 'count' },
      does: 'pulses that the product sheet states for a set',
      optional: 'capacity'
    }
  },
  outputs: {
    days: { does: 'whole days that the set lasts', unit: 'days' },
    years: { does: 'the same in years', unit: 'years' },
    'days-curved': {
      does: 'days if the loss followed what is left; longer, and not used, where there is a capacity',
      unit: 'days'
    }
  },
  sources: ['ohms-law', 'common-practice', 'product-sheet', 'project-rule'],
  limits:
    'Self-discharge is counted as a steady current, which is the shorter way. Capacity falls with load and cold; the date code of the cells caps every result.',
  run: inputs => {
    const byPulses = fromPulses(inputs)
    const byCapacity = optionalNumber(inputs, 'capacity') === undefined ? undefined : fromCapacity(inputs)
    if (byCapacity && 'absent' in byCapacity) return byCapacity
    if (byPulses && 'absent' in byPulses) return byPulses
    if (!byPulses && !byCapacity)
      return absent('give a capacity with what is drawn, or rated-pulses with pulses-per-day')
    return shorter(byCapacity, byPulses)
  },
  example: {
    inputs: {
      capacity: '565 mAh',
      usable: '70 %',
      standing: '20 µA',
      'pulses-per-day': '24',
      'pulse-charge': '0.01492 mAh',
      'self-discharge': '3 %'
    },
    outputs: { days: 447, years: 1.2238, 'days-curved': 463.6 }
  }
}

interface Life {
  readonly days: number
  readonly curved?: number
  readonly steps: readonly string[]
}

function shorter(byCapacity: Life | undefined, byPulses: Life | undefined): Worked<Record<string, OutputValue>> {
  const both = [byCapacity, byPulses].filter(life => life !== undefined)
  const days = Math.min(...both.map(life => life.days))
  const curved = byCapacity?.curved
  const compared = both.length > 1 ? [`the shorter: ${figures(Math.floor(days), 6)} days`] : []
  return {
    value: {
      days: Math.floor(days + 1e-9),
      years: days / YEAR_DAYS,
      ...(curved === undefined ? {} : { 'days-curved': curved })
    },
    steps: [...both.flatMap(life => life.steps), ...compared]
  }
}

function fromPulses(inputs: CalculationInputs): Maybe<Life> | undefined {
  const rated = optionalNumber(inputs, 'rated-pulses')
  const perDay = optionalNumber(inputs, 'pulses-per-day')
  if (rated === undefined) return undefined
  if (perDay === undefined) return absent('rated-pulses needs pulses-per-day')
  const fault = notPositive({ 'rated-pulses': rated, 'pulses-per-day': perDay })
  return fault ?? { days: pulseLifeDays(rated, perDay), steps: [pulseLifeStep(rated, perDay)] }
}

function fromCapacity(inputs: CalculationInputs): Maybe<Life> {
  const read = (name: string, otherwise: number) => optionalNumber(inputs, name) ?? otherwise
  const capacityMah = read('capacity', 0) / COULOMB_PER_MAH
  const usable = read('usable', 1)
  const standingA = read('standing', 0)
  const pulses = read('pulses-per-day', 0)
  const pulseMah = read('pulse-charge', 0) / COULOMB_PER_MAH
  const stated = read('self-discharge', 0)
  const fault =
    notPositive({ capacity: capacityMah, usable }) ??
    negative({ standing: standingA, 'pulses-per-day': pulses, 'pulse-charge': pulseMah, 'self-discharge': stated })
  if (fault) return fault
  if (usable > 1) return absent('usable cannot be more than 100 %')
  if (stated >= 1) return absent('self-discharge must be less than 100 % a year')
  const temperature = optionalNumber(inputs, 'temperature')
  const warm = warmed(stated, usable, temperature)
  const drawnMahPerDay = 24 * standingA * 1000 + pulses * pulseMah
  const drain = { capacityMah, usable: warm.usable, drawnMahPerDay, yearlyLoss: warm.loss }
  if (drawnMahPerDay === 0 && warm.loss === 0)
    return absent('nothing is drawn and nothing is lost, so no day can be set')
  const days = lifeDays(drain)
  const lost = (capacityMah * warm.loss) / YEAR_DAYS
  const steps = [
    ...warm.steps,
    `24 h × ${measure(standingA * 1e6, 4, 'µA')} + ${figures(pulses, 4)} pulses × ${measure(pulseMah, 4, 'mAh')} = ${measure(drawnMahPerDay, 4, 'mAh')} a day`,
    `${measure(capacityMah, 5, 'mAh')} × ${percent(warm.loss)} / ${YEAR_DAYS} days = ${measure(lost, 3, 'mAh')} a day lost by itself`,
    `${measure(capacityMah, 5, 'mAh')} × ${percent(warm.usable)} / (${figures(drawnMahPerDay, 4)} + ${measure(lost, 3, 'mAh')} a day) = ${measure(days, 4, 'days')}`
  ]
  return { days, steps, ...(drawnMahPerDay > 0 && warm.loss < 1 ? { curved: curvedLifeDays(drain) } : {}) }
}

interface Warmed {
  readonly loss: number
  readonly usable: number
  readonly steps: readonly string[]
}

function warmed(stated: number, usable: number, temperatureC: number | undefined): Warmed {
  if (temperatureC === undefined) return { loss: stated, usable, steps: [] }
  // Cold is given no credit: what it spares, the pulse loses.
  const loss = Math.max(stated, selfDischargeAt(stated, temperatureC))
  const steps =
    stated === 0 || loss === stated
      ? []
      : [
          `${percent(stated)} × 2^((${figures(temperatureC, 3)} − ${SELF_DISCHARGE_BASE_C}) / 10) = ${percent(loss)} a year at ${measure(temperatureC, 3, '°C')}`
        ]
  if (temperatureC >= COLD_FACTOR.belowC) return { loss, usable, steps }
  const cold = `below 0\u00a0°C half of the capacity counts (rule of this project): ${percent(usable)} × 0.5 = ${percent(usable * COLD_FACTOR.usable)}`
  return { loss, usable: usable * COLD_FACTOR.usable, steps: [...steps, cold] }
}

const percent = (fraction: number): string => measure(fraction * 100, 3, '%')
