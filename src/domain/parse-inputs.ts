import { distance } from 'fastest-levenshtein'
import { DIMENSIONS } from '../units/dimension.ts'
import { isBeyondACentury, parseDate, parseInterval } from '../units/date.ts'
import { parseQuantity, unitsOf } from '../units/quantity.ts'
import type { QuantityProblem } from '../units/quantity.ts'
import { parseWireSize } from '../units/wire-size.ts'
import type { Dimension } from '../units/dimension.ts'
import type { Calculation, CalculationInputs, InputKind } from './calculation.ts'

/** What is wrong with one input, in a sentence, and how to write it. */
export interface InputProblem {
  readonly input: string
  readonly message: string
  readonly fix: string
}

export type ParsedInputs =
  | { readonly ok: true; readonly inputs: CalculationInputs }
  | { readonly ok: false; readonly problems: readonly InputProblem[] }

/** Reads the inputs of a card as a person types them. All that is wrong is told at once; an input left out is passed over if it may be. */
export function parseInputs(card: Calculation, texts: Readonly<Record<string, string>>): ParsedInputs {
  const inputs: Record<string, unknown> = {}
  const problems = unknownInputs(card, texts)
  for (const [input, spec] of Object.entries(card.inputs)) {
    const text = texts[input]
    const example = `--${input} "${card.example.inputs[input] ?? sample(spec.kind)}"`
    if (text === undefined) {
      if (spec.optional === undefined)
        problems.push({ input, message: `${input} is not given: ${spec.does}.`, fix: example })
      continue
    }
    const read = readInput(spec.kind, text.trim())
    if ('value' in read) inputs[input] = read.value
    else
      problems.push({
        input,
        message: `${input}: ${read.message}`,
        fix: read.fix ? `--${input} "${read.fix}"` : example
      })
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, inputs }
}

type Read = { readonly value: unknown } | { readonly message: string; readonly fix?: string }

function readInput(kind: InputKind, text: string): Read {
  switch (kind.is) {
    case 'quantity':
      return readQuantity(text, kind.dimension)
    case 'wire-size':
      return given(parseWireSize(text), `“${text}” is not a wire size.`)
    case 'count':
      return readCount(text)
    case 'number':
      return readNumber(text)
    case 'date':
      return given(parseDate(text), `“${text}” is not a day of the calendar, written year-month-day.`)
    case 'interval':
      return readInterval(text)
    case 'choice':
      return readChoice(text, kind.of)
    case 'text':
      return given(text === '' ? undefined : text, 'nothing is written.')
  }
}

function readInterval(text: string): Read {
  const interval = parseInterval(text)
  if (interval && isBeyondACentury(interval)) return { message: `“${text}” is more than 100 years.` }
  return given(interval, `“${text}” is not an interval of days, weeks, months or years.`)
}

const given = (value: unknown, message: string): Read => (value === undefined ? { message } : { value })

function readCount(text: string): Read {
  if (/^[1-9]\d{0,2}(,\d{3})+$/u.test(text))
    return { message: `“${text}” has a comma; write it without.`, fix: text.replaceAll(',', '') }
  return given(/^\d+$/u.test(text) ? Number(text) : undefined, `“${text}” is not a whole number.`)
}

function readNumber(text: string): Read {
  const plain = text.replace(/^\u2212/u, '-')
  if (/^[+-]?\d+,\d+$/u.test(plain)) {
    const grouped = /^[+-]?[1-9]\d{0,2},\d{3}$/u.test(plain)
    return commaWords(text, plain.replace(',', '.'), grouped ? plain.replace(',', '') : undefined)
  }
  return given(/^[+-]?(\d+(?:\.\d*)?|\.\d+)$/u.test(plain) ? Number(plain) : undefined, `“${text}” is not a number.`)
}

/** A comma may stand for a point or for thousands; where both are possible neither is guessed. */
function commaWords(text: string, corrected: string, thousands: string | undefined): Read {
  if (thousands === undefined) return { message: `“${text}” has a comma; write a point.`, fix: corrected }
  return {
    message: `“${text}” has a comma; write “${thousands}” or “${corrected}”, whichever is meant.`,
    fix: thousands
  }
}

function readChoice(text: string, of: readonly string[]): Read {
  const same = of.find(one => one.toLowerCase() === text.toLowerCase())
  return same === undefined
    ? { message: `“${text}” is not one of: ${of.join('; ')}.`, fix: nearest(text, of) }
    : { value: same }
}

function readQuantity(text: string, dimension: Dimension): Read {
  const parsed = parseQuantity(text, dimension)
  return parsed.ok ? { value: parsed.value.si } : quantityWords(parsed.problem, dimension, text)
}

function quantityWords(problem: QuantityProblem, dimension: Dimension, text: string): Read {
  const { noun, example } = DIMENSIONS[dimension]
  const units = unitsOf(dimension).slice(0, 4).join(', ')
  switch (problem.kind) {
    case 'unit-missing':
      return {
        message: `“${text}” has no unit; ${noun} is written like “${example}”.`,
        fix: `${problem.number} ${unitsOf(dimension)[0]}`
      }
    case 'decimal-comma':
      return commaWords(text, problem.corrected, problem.thousands)
    case 'unit-of-another-kind':
      return {
        message: `“${problem.unit}” measures ${DIMENSIONS[problem.dimension].noun}; ${noun} is due, in ${units}.`
      }
    case 'unit-unknown':
      return { message: `“${problem.unit}” is not a unit of ${noun}; use ${units}.` }
    case 'not-a-quantity':
      return { message: `“${text}” is not ${noun}; write it like “${example}”.` }
  }
}

function unknownInputs(card: Calculation, texts: Readonly<Record<string, string>>): InputProblem[] {
  const known = Object.keys(card.inputs)
  return Object.keys(texts)
    .filter(input => !Object.hasOwn(card.inputs, input))
    .map(input => ({
      input,
      message: `${card.name} has no input “${input}”; it has ${known.join(', ')}.`,
      fix: `--${nearest(input, known)}`
    }))
}

function nearest(text: string, names: readonly string[]): string {
  return names.reduce((best, name) => (distance(text, name) < distance(text, best) ? name : best), names[0] ?? '')
}

function sample(kind: InputKind): string {
  switch (kind.is) {
    case 'quantity':
      return DIMENSIONS[kind.dimension].example
    case 'wire-size':
      return '0.75 mm²'
    case 'count':
    case 'number':
      return '2'
    case 'date':
      return '2026-05-01'
    case 'interval':
      return '12 months'
    case 'choice':
      return kind.of[0] ?? ''
    case 'text':
      return 'text'
  }
}
