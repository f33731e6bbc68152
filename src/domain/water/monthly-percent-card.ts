import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { etoZone } from '../../reference/eto-zones.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import { show } from '../../units/show.ts'
import { negative } from '../amounts.ts'
import type { Calculation, CalculationInputs, OutputSpec } from '../calculation.ts'
import { commonMonthDays } from '../climate/day-of-year.ts'
import { figures, measure } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { readAmounts } from './amount-list.ts'
import { monthlyPercents } from './monthly-percent.ts'
import { needStep, netNeedM } from './run-time.ts'
import { UNITS_INPUT, unitsOfWorking } from './units.ts'

const EXAMPLE = '1.24 1.96 3.41 5.10 6.82 7.80 8.06 7.13 5.40 3.72 1.80 0.93 in'
const BASES = ['day', 'month'] as const

const monthOutputs = Object.fromEntries(
  MONTHS.map(month => [month, { does: `${month}, of the month that wants most`, unit: '%' }])
) as Readonly<Record<Month, OutputSpec>>

export const monthlyPercentCard: Calculation = {
  name: 'monthly-percent',
  title: 'Percent of each month',
  does: 'Gives what each month wants as a percent of the month that wants most: what a run time set for that month is multiplied by.',
  inputs: {
    eto: {
      kind: { is: 'text' },
      does: `reference evapotranspiration of the twelve months, January first, the unit once at the end: ${EXAMPLE}`,
      optional: 'zone'
    },
    zone: {
      kind: { is: 'count' },
      does: 'California reference evapotranspiration zone, 1 to 18, in place of eto',
      optional: 'eto'
    },
    factor: { kind: { is: 'number' }, does: 'plant factor, where rain is given', optional: '1' },
    rain: { kind: { is: 'text' }, does: 'rain that counts, twelve months, written like eto', optional: 'none' },
    basis: {
      kind: { is: 'choice', of: BASES },
      does: 'day: need of a day, for run times of a watering; month: need of the whole month, as most tables are printed',
      optional: 'day'
    },
    ...UNITS_INPUT
  },
  outputs: { peak: { does: 'month that wants most', unit: '' }, ...monthOutputs },
  sources: ['wsu-monthly', 'cimis-zones', 'project-rule'],
  limits:
    'The first of months that want as much is the peak. February has 28 days. A month where the rain that counts is enough has 0 %.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const eto = etoOf(inputs)
    if (isAbsent(eto)) return eto
    const rain = rainOf(inputs)
    if (isAbsent(rain)) return rain
    const factor = optionalNumber(inputs, 'factor') ?? 1
    const fault = negative({ factor })
    if (fault) return fault
    const byDay = optionalText(inputs, 'basis') !== 'month'
    const needs = eto.map((month, index) => netNeedM(month, factor, rain[index] ?? 0))
    const amounts = needs.map((need, index) => (byDay ? need / commonMonthDays(index + 1) : need))
    const percents = monthlyPercents(amounts)
    if (isAbsent(percents)) return percents
    const { shares, peak } = percents
    const amount = (index: number) => {
      const shown = show(needs[index] ?? 0, 'depth', system)
      return byDay ? `${shown} / ${commonMonthDays(index + 1)} days` : shown
    }
    return {
      value: {
        peak: MONTHS[peak] ?? '',
        ...Object.fromEntries(MONTHS.map((month, index) => [month, (shares[index] ?? 0) * 100]))
      },
      steps: [
        needStep(eto[peak] ?? 0, factor, rain[peak] ?? 0, system).replace('need', `most, ${MONTHS[peak]}`),
        ...MONTHS.map(
          (month, index) =>
            `${month}: (${amount(index)}) / (${amount(peak)}) = ${measure((shares[index] ?? 0) * 100, 3, '%')}`
        )
      ]
    }
  },
  example: {
    inputs: { zone: '12', basis: 'month' },
    outputs: { peak: 'Jul', Jan: 15.38, Feb: 24.32, Jun: 96.77, Jul: 100, Dec: 11.54 }
  }
}

function etoOf(inputs: CalculationInputs): Maybe<readonly number[]> {
  const [text, number] = [optionalText(inputs, 'eto'), optionalNumber(inputs, 'zone')]
  if ((text === undefined) === (number === undefined)) return absent('give eto or zone, one of them')
  if (text !== undefined) return twelve(text)
  const zone = etoZone(number ?? 0)
  return zone
    ? zone.etoIn.map(inches => inches * 0.0254)
    : absent(`there is no zone ${figures(number ?? 0, 3)}; they go from 1 to 18`)
}

function rainOf(inputs: CalculationInputs): Maybe<readonly number[]> {
  const text = optionalText(inputs, 'rain')
  return text === undefined ? MONTHS.map(() => 0) : twelve(text)
}

function twelve(text: string): Maybe<readonly number[]> {
  const amounts = readAmounts(text, 'length', EXAMPLE)
  if (isAbsent(amounts) || amounts.length === MONTHS.length) return amounts
  return absent(`${amounts.length} months are given; twelve are due, January first`)
}
