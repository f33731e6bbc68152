import { DIMENSIONS } from '../../units/dimension.ts'
import type { Dimension } from '../../units/dimension.ts'
import { parseQuantity, unitsOf } from '../../units/quantity.ts'
import type { QuantityProblem } from '../../units/quantity.ts'
import type { Details } from '../faults/fault.ts'
import { wrong } from '../schema/field.ts'
import type { Wrong } from '../schema/field.ts'
import { nearest } from './nearest.ts'
import { otherNumber } from './number-form.ts'

/** The units that people mean when they leave one out, metric and US in pairs, most likely first. From memory. */
const LIKELY: Readonly<Record<Dimension, readonly (readonly [metric: string, us: string])[]>> = {
  length: [
    ['m', 'ft'],
    ['mm', 'in'],
    ['cm', 'in']
  ],
  area: [['m²', 'ft²']],
  volume: [
    ['m³', 'gal'],
    ['L', 'gal']
  ],
  flow: [
    ['L/min', 'gpm'],
    ['L/h', 'gph'],
    ['m³/h', 'gpm']
  ],
  pressure: [
    ['bar', 'psi'],
    ['kPa', 'psi']
  ],
  resistance: [['ohm', 'ohm']],
  'resistance-per-length': [['ohm/km', 'ohm/kft']],
  voltage: [['V', 'V']],
  current: [
    ['mA', 'mA'],
    ['µA', 'µA']
  ],
  charge: [['mAh', 'mAh']],
  energy: [
    ['Wh', 'Wh'],
    ['mJ', 'mJ']
  ],
  power: [['W', 'W']],
  capacitance: [['µF', 'µF']],
  duration: [
    ['min', 'min'],
    ['s', 's'],
    ['h', 'h'],
    ['ms', 'ms']
  ],
  temperature: [['°C', '°F']],
  ratio: [['%', '%']],
  rate: [['mm/h', 'in/h']],
  speed: [['m/s', 'mph']],
  radiation: [['MJ/m²/d', 'MJ/m²/d']],
  angle: [['°', '°']],
  force: [['kN', 'lbf']]
}

/** Spellings that are no unit here but whose meaning is plain. */
const SPELLINGS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    lpm: 'L/min',
    'l/m': 'L/min',
    lph: 'L/h',
    'l/hr': 'L/h',
    lps: 'L/s',
    'gal/hr': 'gal/h',
    feet: 'ft',
    foot: 'ft',
    inch: 'in',
    inches: 'in',
    meter: 'm',
    meters: 'm',
    metre: 'm',
    metres: 'm',
    sqm: 'm²',
    'm^2': 'm²',
    sqft: 'ft²',
    'ft^2': 'ft²',
    sf: 'ft²',
    mins: 'min',
    hrs: 'h',
    secs: 's',
    gallons: 'gal',
    gallon: 'gal',
    liters: 'L',
    litres: 'L',
    r: 'ohm',
    'amp-hours': 'Ah',
    pct: '%'
  })
)

/** What to say of a quantity that could not be read. `example` is a whole value of the key at fault, `text` what stands there. */
export function quantityWrong(problem: QuantityProblem, dimension: Dimension, example: string, text: string): Wrong {
  const { noun } = DIMENSIONS[dimension]
  const units = likelyUnits(dimension, example)
  const otherForm = otherNumber(text)
  if (otherForm) return wrong(otherForm.code, { noun, example, ...otherForm.details }, otherForm.value)
  const about = text.replace(/^(?:[~≈<>]|ca\.?|circa|approx\.?|about|abt\.?)\s*|\s+(?:approx\.?|about|ca\.?)$/giu, '')
  if (about !== text && parseQuantity(about, dimension).ok)
    return wrong('file/not-understood', { expected: `${noun} with its unit`, example }, about)
  if (/^\d+(?:\.\d+)?\s*(?:[-–—]|to\b)\s*\d/u.test(text))
    return wrong('file/not-understood', { expected: `${noun}; it is a range`, example })
  const twoUnits = inTwoUnits(text, dimension)
  if (twoUnits !== undefined)
    return wrong('file/not-understood', { expected: `${noun} in one unit`, example }, twoUnits)
  switch (problem.kind) {
    case 'unit-missing': {
      const share = dimension === 'ratio' ? Number(problem.number) : 0
      // 0.7 is a share of one more often than seven tenths of a percent: neither is proposed alone.
      if (share > 0 && share < 1)
        return wrong('file/unit-missing', {
          noun,
          number: problem.number,
          units,
          share: `${Number((share * 100).toPrecision(12))} %`
        })
      return wrong('file/unit-missing', { noun, number: problem.number, units }, `${problem.number} ${units[0]}`)
    }
    case 'decimal-comma':
      return wrong('file/decimal-comma', { noun }, problem.corrected)
    case 'unit-of-another-kind': {
      const given = DIMENSIONS[problem.dimension].noun
      return wrong('file/unit-wrong-kind', { noun, unit: problem.unit, given, units, example })
    }
    case 'unit-unknown': {
      const unit = nearestUnit(problem.unit, dimension)
      const known: Details = unit === undefined ? {} : { nearest: unit }
      const again =
        unit === undefined ? undefined : text.replace(problem.unit, unit).replace(/(\d)(?=[^\d\s.,])/u, '$1 ')
      return wrong('file/unit-unknown', { noun, unit: problem.unit, units, example, ...known }, again)
    }
    case 'not-a-quantity':
      return wrong('file/not-understood', { expected: `${noun} with its unit`, example })
  }
}

/** "41 m 6 ft" in the first of its units, both parts together; undefined where it is no such thing. */
function inTwoUnits(text: string, dimension: Dimension): string | undefined {
  const parts = /^(\d+(?:\.\d+)?)\s*([^\d\s.,]+)\s+(\d+(?:\.\d+)?)\s*([^\d\s.,]+)$/u.exec(text)
  const [, first = '', unit = '', second = '', other = ''] = parts ?? []
  const [one, two] = [parseQuantity(`${first} ${unit}`, dimension), parseQuantity(`${second} ${other}`, dimension)]
  if (!parts || !one.ok || !two.ok || one.value.si === 0) return undefined
  const { value, si, unit: written } = one.value
  return `${Number((value * (1 + two.value.si / si)).toFixed(2))} ${written}`
}

/** The unit of the example first, its US twin beside it: of each pair the metric one stands first. */
export function likelyUnits(dimension: Dimension, example: string): string[] {
  const own = example.replace(/^[^A-Za-z°%µ]*/u, '')
  const small = dimension === 'length' && ['mm', 'cm', 'in'].includes(own)
  const likely = LIKELY[dimension].filter(pair => dimension !== 'length' || pair.includes('m') !== small)
  const pairs = [...likely].sort((a, b) => Number(b.includes(own)) - Number(a.includes(own)))
  return [...new Set(pairs.flat())]
}

export function nearestUnit(unit: string, dimension: Dimension): string | undefined {
  const spelled = SPELLINGS.get(unit.toLowerCase())
  const units = unitsOf(dimension)
  return spelled !== undefined && units.includes(spelled) ? spelled : nearest(unit, units)
}
