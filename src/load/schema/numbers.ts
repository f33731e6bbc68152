import type { z } from 'zod'
import { field, taken, wrong } from './field.ts'
import type { KeyDoc, Read } from './field.ts'

/** Nobody counts more of a thing on a site. */
const MOST_COUNTED = 1_000_000

/** A whole number of things, one at least. */
export function count(does: string, example: string): z.ZodType<number> {
  return field({ does, example }, { type: 'integer', minimum: 1, maximum: MOST_COUNTED }, value => {
    const amount = numberIn(value, { does, example })
    if (!amount.ok) return amount
    if (!Number.isInteger(amount.value)) return wrong('file/not-understood', { expected: 'a whole number', example })
    if (amount.value > MOST_COUNTED) return wrong('file/out-of-range', { range: 'must be 1,000,000 or less', example })
    return amount.value >= 1 ? amount : wrong('file/out-of-range', { range: 'must be 1 or more', example })
  })
}

export interface Range {
  readonly least: number
  readonly most: number
  /** "must be from -90 to 90". */
  readonly words: string
}

/** A number that has no unit: a latitude, a plant factor. */
export function number(does: string, example: string, range: Range): z.ZodType<number> {
  return field({ does, example }, { type: 'number', minimum: range.least, maximum: range.most }, value => {
    const amount = numberIn(value, { does, example })
    if (!amount.ok) return amount
    return amount.value >= range.least && amount.value <= range.most
      ? amount
      : wrong('file/out-of-range', { range: range.words, example })
  })
}

function numberIn(value: string | number | boolean, { example }: KeyDoc): Read<number> {
  const written = String(value)
    .trim()
    .replace(/^\u2212/u, '-')
  if (/^[+-]?\d+,\d+$/u.test(written))
    return wrong('file/decimal-comma', { noun: 'a number' }, written.replace(',', '.'))
  if (/^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/u.test(written)) return taken(Number(written))
  return wrong('file/not-understood', { expected: 'a number alone', example })
}
