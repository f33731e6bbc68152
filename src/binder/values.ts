import { isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Value } from './blocks.ts'
import { show, showStated } from '../units/show.ts'
import type { ShowAs, UnitSystem } from '../units/show.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Words } from '../words/words.ts'

/** How values reach a page: what was written, what was measured, what was computed, and what is not there. */
export const stated = (text: string, mono = false): Value => ({ text, standing: 'stated', ...(mono ? { mono } : {}) })
export const plate = (text: string): Value => ({ text, standing: 'data-plate' })
export const measured = (text: string): Value => ({ text, standing: 'measured', mono: true })
export const computed = (text: string, note?: string): Value => ({
  text,
  standing: 'computed',
  ...(note ? { note } : {})
})

export function notSupplied(words: Words): Value {
  return { text: words.binder.notSupplied, standing: 'not-supplied' }
}

export function notComputed(words: Words, why: string): Value {
  return { text: words.binder.notComputed, standing: 'not-computed', note: why }
}

export function orNotSupplied(text: string | undefined, words: Words, mono = false): Value {
  return text === undefined || text === '' ? notSupplied(words) : stated(text, mono)
}

/** A quantity as it was written, in the unit it was written in. */
export function statedQuantity(amount: Quantity | undefined, words: Words): Value {
  return amount ? stated(showStated(amount)) : notSupplied(words)
}

/** A figure of the plan in the site's units, or why there is none. */
export function figure(value: Maybe<number>, as: ShowAs, units: UnitSystem, words: Words, calculation: string): Value {
  return isAbsent(value) ? notComputed(words, value.reason) : computed(show(value, as, units), calculation)
}
