import type { z } from 'zod'
import type { Dimension } from '../../units/dimension.ts'
import { parseQuantity } from '../../units/quantity.ts'
import type { Parsed, Quantity } from '../../units/quantity.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, taken, wrong } from './field.ts'
import type { KeyDoc, Read, Wrong } from './field.ts'
import { beyondThisWorld } from './of-this-world.ts'

/** How a row of amounts is read: how many are due, and which values an amount may have. */
export interface RowForm {
  /** Any number where left out. */
  readonly count?: number
  /** What is expected, where it cannot be read: "twelve amounts, January first, the unit once at the end". */
  readonly expected: string
  /** What is wrong with an amount; undefined where nothing is. */
  readonly trouble: (amount: Quantity) => string | undefined
}

/** Amounts that share the unit behind the last of them, "8.2 9.0 11.5 °C": as read off a table, or off a row of cans. */
export function quantityRow<D extends Dimension>(
  doc: KeyDoc,
  dimensions: readonly D[],
  form: RowForm
): z.ZodType<readonly Quantity<D>[]> {
  const pattern = String.raw`^\s*([+\-−]?[\d.]+,?\s+)+[+\-−]?[\d.]+\s*\D.*$`
  return field(doc, { type: 'string', pattern }, value => readRow(String(value).trim(), doc, dimensions, form))
}

/** The amounts of a row, or what keeps it from being read. */
export function readRow<D extends Dimension>(
  text: string,
  { example }: KeyDoc,
  dimensions: readonly D[],
  form: RowForm
): Read<readonly Quantity<D>[]> {
  const [, digits = '', unit = ''] = /^([-+−\d.,\s]*?)\s*([^-+−\d.,\s].*)?$/u.exec(text) ?? []
  const numbers = digits.split(/\s+/u).filter(one => one !== '')
  if (numbers.some(one => /\d,\d/u.test(one)))
    return wrong('file/decimal-comma', { noun: 'a row of amounts' }, text.replace(/(\d),(?=\d)/gu, '$1.'))
  if (numbers.length === 0 || (form.count !== undefined && numbers.length !== form.count))
    return wrong('file/not-understood', { expected: form.expected, example })
  const amounts: Quantity<D>[] = []
  for (const number of numbers) {
    const amount = readOne(`${number.replace(/,$/u, '')} ${unit}`, dimensions, { example, text })
    if (!amount.ok) return amount
    const trouble = form.trouble(amount.value) ?? beyondThisWorld(amount.value)
    if (trouble !== undefined) return wrong('file/out-of-range', { range: trouble, example })
    amounts.push(amount.value)
  }
  return taken(amounts)
}

/** The amount in the first dimension that has its unit; the fault is that of the first dimension, with the whole row put right. */
function readOne<D extends Dimension>(
  text: string,
  dimensions: readonly D[],
  of: { readonly example: string; readonly text: string }
): Read<Quantity<D>> {
  const tried = dimensions.map((dimension): Parsed<Quantity<D>> => parseQuantity(text, dimension))
  const read = tried.find(one => one.ok)
  if (read?.ok) return taken(read.value)
  const [first] = tried
  const [dimension] = dimensions
  if (!first || first.ok || dimension === undefined) throw new Error('a row has a dimension')
  const fault = quantityWrong(first.problem, dimension, of.example, text.trim())
  return first.problem.kind === 'unit-missing' ? wholeRow(fault, of) : withoutCorrection(fault)
}

/** The unit that is missing stands once, behind the row: the likely one, or that of the example where it is none of the likely ones. */
function wholeRow(fault: Wrong, { text, example }: { readonly text: string; readonly example: string }): Wrong {
  const own = /[^\d\s.,+\-−"]+(?="?$)/u.exec(example)?.[0] ?? ''
  const likely = fault.details['units']
  const units = Array.isArray(likely) && likely.includes(own) ? (likely as string[]) : [own]
  return wrong(fault.code, { ...fault.details, number: text, units }, `${text} ${units[0]}`)
}

const withoutCorrection = ({ code, details }: Wrong): Wrong => wrong(code, details)
