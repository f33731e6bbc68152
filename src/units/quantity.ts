import Qty from 'js-quantities'
import { DIMENSIONS } from './dimension.ts'
import type { Dimension, DimensionSpec } from './dimension.ts'

/** A measured or stated amount. `si` is in the coherent unit of its dimension (°C for temperature); `value` and `unit` are as written. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D
  readonly si: number
  readonly value: number
  readonly unit: string
}

export type QuantityProblem =
  | { readonly kind: 'unit-missing'; readonly number: string }
  | { readonly kind: 'unit-unknown'; readonly unit: string }
  | { readonly kind: 'unit-of-another-kind'; readonly unit: string; readonly dimension: Dimension }
  /** `thousands` is the other thing that "2,050 ft" may mean; it is left out where the digits cannot be grouped like that. */
  | { readonly kind: 'decimal-comma'; readonly corrected: string; readonly thousands?: string }
  | { readonly kind: 'not-a-quantity'; readonly text: string }

export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: QuantityProblem }

const NUMBER = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/u

/**
 * Reads "38 L/min" as a flow. A number without a unit, a decimal comma and a unit of another kind are problems, never guesses.
 * Spaces of any width between number and unit are fine. Temperatures are points on the scale, not differences.
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D): Parsed<Quantity<D>> {
  const trimmed = text
    .replace(/[\s\u00a0\u2009\u202f]+/gu, ' ')
    .replace(/^\u2212/u, '-')
    .trim()
  const comma = /^([+-]?\d+),(\d+)(\s*[^\d,].*)?$/u.exec(trimmed)
  if (comma) return fail(commaProblem(comma[1] ?? '', comma[2] ?? '', comma[3] ?? ''))
  const match = NUMBER.exec(trimmed)
  if (!match) return fail({ kind: 'not-a-quantity', text: trimmed })
  const unit = match[2] ?? ''
  if (unit === '') return fail({ kind: 'unit-missing', number: trimmed })
  const toSi = conversion(dimension, unit)
  if (!toSi) {
    const other = (Object.keys(DIMENSIONS) as Dimension[]).find(name => conversion(name, unit))
    return fail(other ? { kind: 'unit-of-another-kind', unit, dimension: other } : { kind: 'unit-unknown', unit })
  }
  const value = Number(match[1])
  return { ok: true, value: { dimension, si: toSi(value), value, unit } }
}

/** For values that the program itself writes; throws on a misspelt unit, which is a fault of ours. */
export function quantity<D extends Dimension>(value: number, unit: string, dimension: D): Quantity<D> {
  const toSi = conversion(dimension, unit)
  if (!toSi) throw new Error(`${unit} is not a unit of ${dimension}`)
  return { dimension, si: toSi(value), value, unit }
}

/** The number of `unit` in an amount given in the coherent unit of its dimension. */
export function fromSi(si: number, unit: string, dimension: Dimension): number {
  if (dimension === 'temperature') return unit.includes('F') ? si * 1.8 + 32 : si
  return si / factor(dimension, unit)
}

export function inUnit(amount: Quantity, unit: string): number {
  return amount.unit === unit ? amount.value : fromSi(amount.si, unit, amount.dimension)
}

/** The same text back: the number in its shortest form and the unit as written. Inverse of `parseQuantity`. */
export function writeQuantity(amount: Quantity): string {
  return `${amount.value} ${amount.unit}`
}

export function unitsOf(dimension: Dimension): readonly string[] {
  return Object.keys(DIMENSIONS[dimension].units)
}

function fail(problem: QuantityProblem): Parsed<never> {
  return { ok: false, problem }
}

function commaProblem(whole: string, rest: string, unit: string): QuantityProblem {
  const corrected = `${whole}.${rest}${unit}`
  const grouped = rest.length === 3 && /^[+-]?[1-9]\d{0,2}$/u.test(whole)
  return { kind: 'decimal-comma', corrected, ...(grouped ? { thousands: `${whole}${rest}${unit}` } : {}) }
}

function conversion(dimension: Dimension, unit: string): ((value: number) => number) | undefined {
  if (!Object.hasOwn(DIMENSIONS[dimension].units, unit)) return undefined
  if (dimension === 'temperature') return value => (unit.includes('F') ? (value - 32) / 1.8 : value)
  const worth = factor(dimension, unit)
  return value => value * worth
}

const factors = new Map<string, number>()

/** Worth of one `unit` in the coherent unit, asked of the library once. */
function factor(dimension: Dimension, unit: string): number {
  const key = `${dimension} ${unit}`
  const known = factors.get(key)
  if (known !== undefined) return known
  const spec: DimensionSpec = DIMENSIONS[dimension]
  const expression = spec.units[unit]
  if (expression === undefined) throw new Error(`${unit} is not a unit of ${dimension}`)
  const worth = dimension === 'ratio' ? Number(expression) : expressionWorth(expression, spec.si)
  factors.set(key, worth)
  return worth
}

/** The library takes one scalar in front, so "ohm/(1000 ft)" is divided here. */
function expressionWorth(expression: string, si: string): number {
  const divided = /^(.+)\/\(([\d.]+) (.+)\)$/u.exec(expression)
  if (divided) return Qty(`1 ${divided[1]}/${divided[3]}`).to(si).scalar / Number(divided[2])
  return Qty(/^\d/u.test(expression) ? expression : `1 ${expression}`).to(si).scalar
}
