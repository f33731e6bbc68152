import { fromSi } from '../../units/quantity.ts'
import { measure } from '../figures.ts'
import { isGauge } from './ladder.ts'
import type { WireSize } from '../../units/wire-size.ts'

/** Gauges are reckoned in feet, metric sizes in meters, where nobody wrote a unit. */
export const unitOf = (size: WireSize): 'm' | 'ft' => (isGauge(size) ? 'ft' : 'm')

export function lengthText(lengthM: number, unit: 'm' | 'ft'): string {
  return measure(fromSi(lengthM, unit, 'length'), 4, unit)
}

/** "24.5 Ω/km" or "6.385 Ω/kft". */
export function perLengthText(ohmPerM: number, unit: 'm' | 'ft'): string {
  return `${perLengthNumber(ohmPerM, unit)}\u00a0${unit === 'ft' ? 'Ω/kft' : 'Ω/km'}`
}

export function perLengthNumber(ohmPerM: number, unit: 'm' | 'ft'): string {
  const value = fromSi(ohmPerM, unit === 'ft' ? 'Ω/kft' : 'Ω/km', 'resistance-per-length')
  return measure(value, 4, '').trim()
}

export const ohmText = (ohm: number): string => measure(ohm, 3, 'Ω')
export const voltText = (volt: number): string => measure(volt, 3, 'V')
