import { fromSi } from './quantity.ts'
import type { Quantity } from './quantity.ts'
import type { Dimension } from './dimension.ts'

export type UnitSystem = 'us' | 'metric'

/** How a kind of figure is shown: which unit in which system, and how many digits carry meaning. */
interface Style {
  readonly dimension: Dimension
  readonly us: string
  readonly metric: string
  /** Keeps its zeros, so that readings stand under each other. */
  readonly fixed?: true
  /** Decimal places, by system. */
  readonly places: readonly [us: number, metric: number]
}

export const STYLES = {
  run: { dimension: 'length', us: 'ft', metric: 'm', places: [0, 1] },
  depth: { dimension: 'length', us: 'in', metric: 'mm', places: [2, 1] },
  cover: { dimension: 'length', us: 'in', metric: 'mm', places: [0, 0] },
  diameter: { dimension: 'length', us: 'in', metric: 'mm', places: [4, 3] },
  elevation: { dimension: 'length', us: 'ft', metric: 'm', places: [0, 0] },
  area: { dimension: 'area', us: 'ft²', metric: 'm²', places: [0, 1] },
  'wire-area': { dimension: 'area', us: 'mm²', metric: 'mm²', places: [3, 3] },
  volume: { dimension: 'volume', us: 'gal', metric: 'm³', places: [0, 1] },
  flow: { dimension: 'flow', us: 'gpm', metric: 'L/min', places: [2, 1] },
  pressure: { dimension: 'pressure', us: 'psi', metric: 'bar', places: [0, 1] },
  'pressure-loss': { dimension: 'pressure', us: 'psi', metric: 'bar', places: [1, 2] },
  velocity: { dimension: 'speed', us: 'ft/s', metric: 'm/s', places: [1, 2] },
  inside: { dimension: 'length', us: 'in', metric: 'mm', places: [3, 1] },
  resistance: { dimension: 'resistance', us: 'Ω', metric: 'Ω', places: [2, 2], fixed: true },
  'resistance-per-length': { dimension: 'resistance-per-length', us: 'Ω/kft', metric: 'Ω/km', places: [3, 2] },
  voltage: { dimension: 'voltage', us: 'V', metric: 'V', places: [2, 2], fixed: true },
  current: { dimension: 'current', us: 'mA', metric: 'mA', places: [3, 3] },
  charge: { dimension: 'charge', us: 'mAh', metric: 'mAh', places: [0, 0] },
  minutes: { dimension: 'duration', us: 'min', metric: 'min', places: [1, 1] },
  hours: { dimension: 'duration', us: 'h', metric: 'h', places: [1, 1] },
  seconds: { dimension: 'duration', us: 's', metric: 's', places: [0, 0] },
  temperature: { dimension: 'temperature', us: '°F', metric: '°C', places: [0, 0] },
  percent: { dimension: 'ratio', us: '%', metric: '%', places: [0, 0] },
  rate: { dimension: 'rate', us: 'in/h', metric: 'mm/h', places: [2, 1] }
} as const satisfies Record<string, Style>

export type ShowAs = keyof typeof STYLES

/** "36 m" or "118 ft": rounded for reading, in the unit of the site, with a space that does not break. */
export function show(si: number, as: ShowAs, system: UnitSystem): string {
  const style: Style = STYLES[as]
  const unit = style[system]
  return `${styledText(fromSi(si, unit, style.dimension), style, system)}\u00a0${unit}`
}

/** The rounded number alone, for table columns whose head carries the unit. */
export function showNumber(si: number, as: ShowAs, system: UnitSystem): string {
  const style: Style = STYLES[as]
  return styledText(fromSi(si, style[system], style.dimension), style, system)
}

function styledText(value: number, { places, fixed }: Style, system: UnitSystem): string {
  const digits = places[system === 'us' ? 0 : 1]
  return fixed ? value.toFixed(digits).replace(/^-/u, '\u2212') : roundedText(value, digits)
}

export function unitFor(as: ShowAs, system: UnitSystem): string {
  return STYLES[as][system]
}

/** A stated quantity keeps the unit it was stated in, whatever the site's units: the writing is the authority. */
export function showStated(amount: Quantity): string {
  return `${amount.value}\u00a0${PRETTY[amount.unit] ?? amount.unit}`
}

/** Rounded to so many places, trailing zeros dropped, a true minus sign, never "-0". */
export function roundedText(value: number, places: number): string {
  const text = value.toFixed(places)
  const bare = text.includes('.') ? text.replace(/\.?0+$/u, '') : text
  return bare === '-0' ? '0' : bare.replace(/^-/u, '\u2212')
}

const PRETTY: Readonly<Record<string, string>> = {
  ohm: 'Ω',
  ohms: 'Ω',
  '\u2126': '\u03a9',
  kohm: 'kΩ',
  Mohm: 'MΩ',
  m2: 'm²',
  ft2: 'ft²',
  'sq ft': 'ft²',
  'sq m': 'm²',
  m3: 'm³',
  ft3: 'ft³',
  'm3/h': 'm³/h',
  uA: 'µA',
  uF: 'µF',
  "'": 'ft',
  '"': 'in',
  C: '°C',
  F: '°F',
  l: 'L',
  'l/min': 'L/min',
  'l/h': 'L/h',
  'ohm/km': 'Ω/km',
  'ohm/kft': 'Ω/kft',
  'ohm/1000 ft': 'Ω/kft'
}
