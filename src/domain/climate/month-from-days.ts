import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import { show } from '../../units/show.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, textOf } from '../inputs.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'
import { commonMonthDays, monthNumber } from './day-of-year.ts'

/** Days of a month that must be on record, over all its years, before its mean is taken (rule of this project). */
export const LEAST_DAYS = 10

/**
 * A month's total in m from days on record: their mean times the days of the month, so that gaps and records of several years count alike.
 * Month 1 to 12. Absent with fewer than ten days. 310 mm over 62 days of July: 155 mm.
 */
export function monthFromDays(totalM: number, days: number, month: number): Maybe<number> {
  if (days < LEAST_DAYS) return absent(`only ${days} days of the month are on record; ${LEAST_DAYS} are due`)
  return (totalM / days) * commonMonthDays(month)
}

export const monthFromDaysCard: Calculation = {
  name: 'month-from-days',
  title: 'A month from days on record',
  does: 'Gives the reference evapotranspiration or the rain of a month from the days of it that are on record, over one year or several.',
  inputs: {
    total: { kind: { is: 'quantity', dimension: 'length' }, does: 'sum over the days on record' },
    days: { kind: { is: 'count' }, does: 'how many days of the month are on record, all years together' },
    month: { kind: { is: 'choice', of: MONTHS }, does: 'the month' },
    ...UNITS_INPUT
  },
  outputs: {
    mean: { does: 'mean of a day', unit: 'mm' },
    'in-month': { does: 'of the month', unit: 'mm' },
    'in-month-us': { does: 'the same in inches', unit: 'in' }
  },
  sources: ['project-rule'],
  limits: `A month counts from ${LEAST_DAYS} days on record. One year is weather, not climate: several years tell what to expect. February has 28 days.`,
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [totalM, days] = [numberOf(inputs, 'total'), numberOf(inputs, 'days')]
    const month = monthNumber(textOf(inputs, 'month') as Month)
    if (totalM < 0) return absent('total must not be below zero')
    const value = monthFromDays(totalM, days, month)
    if (isAbsent(value)) return value
    const mean = totalM / days
    const depth = (m: number) => show(m, 'depth', system)
    return {
      value: { mean: mean * 1000, 'in-month': value * 1000, 'in-month-us': value / 0.0254 },
      steps: [
        `${depth(totalM)} over ${days} days on record = ${depth(mean)} a day`,
        `× ${figures(commonMonthDays(month), 2)} days = ${depth(value)} in the month`
      ]
    }
  },
  example: {
    inputs: { total: '310 mm', days: '62', month: 'Jul' },
    outputs: { mean: 5, 'in-month': 155, 'in-month-us': 6.102 }
  }
}
