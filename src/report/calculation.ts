import type { Calculation, InputSpec, OutputValue, Worked } from '../domain/calculation.ts'
import { citeSource } from '../reference/sources.ts'
import { roundedText } from '../units/show.ts'
import { unitsOf } from '../units/quantity.ts'

/** "coilResistance" is typed as --coil-resistance. */
export const kebab = (name: string): string => name.replace(/[A-Z]/gu, letter => `-${letter.toLowerCase()}`)

/** Significant digits of a printed result; the JSON has them all. */
function valueText(value: OutputValue, unit: string): string {
  if (typeof value !== 'number') return String(value)
  const places = Number.isInteger(value) ? 0 : Math.max(0, 4 - Math.floor(Math.log10(Math.abs(value) || 1)) - 1)
  return `${roundedText(value, places)}${unit ? ` ${unit}` : ''}`
}

/** The result first, then how it came about, then where the formula is from. */
export function resultText(card: Calculation, { value, steps }: Worked<Readonly<Record<string, OutputValue>>>): string {
  const outputs = Object.entries(card.outputs).flatMap(([name, spec]) => {
    const result = value[name]
    return result === undefined ? [] : [`  ${spec.does.padEnd(44)} ${valueText(result, spec.unit)}`]
  })
  return [
    card.title,
    ...outputs,
    '',
    ...steps.map(step => `  ${step}`),
    '',
    ...card.sources.map(id => `  source  ${citeSource(id)}`),
    ...(card.limits ? [`  note    ${card.limits}`] : [])
  ].join('\n')
}

export function resultJson(card: Calculation, { value, steps }: Worked<Readonly<Record<string, OutputValue>>>): object {
  return {
    name: card.name,
    outputs: Object.fromEntries(
      Object.entries(value).map(([name, result]) => [name, { value: result, unit: card.outputs[name]?.unit ?? '' }])
    ),
    steps,
    sources: card.sources.map(citeSource)
  }
}

/** What a calculation wants, for a person who has given it nothing yet. */
export function calculationText(card: Calculation): string {
  const inputs = Object.entries(card.inputs).map(
    ([name, spec]) => `  --${kebab(name).padEnd(24)} ${spec.does}${inputHint(spec)}`
  )
  const example = Object.entries(card.example.inputs)
    .map(([name, text]) => `--${kebab(name)} "${text}"`)
    .join(' ')
  return [card.title, `  ${card.does}`, '', ...inputs, '', `  npx underlid calc ${card.name} ${example}`].join('\n')
}

function inputHint({ kind, optional }: InputSpec): string {
  const what =
    kind.is === 'quantity'
      ? ` (${unitsOf(kind.dimension).slice(0, 4).join(', ')})`
      : kind.is === 'choice'
        ? ` (${kind.of.join(' | ')})`
        : kind.is === 'wire-size'
          ? ' (12 AWG, 2.5 mm²)'
          : ''
  return what + (optional === undefined ? '' : `; left out: ${optional}`)
}

export function calculationJson(card: Calculation): object {
  const { name, title, does, inputs, outputs, sources, limits, example } = card
  return {
    name,
    title,
    does,
    inputs: Object.fromEntries(
      Object.entries(inputs).map(([input, { kind, does: what, optional }]) => [
        kebab(input),
        {
          does: what,
          ...kind,
          ...(kind.is === 'quantity' ? { units: unitsOf(kind.dimension) } : {}),
          required: optional === undefined,
          ...(optional === undefined ? {} : { left_out: optional })
        }
      ])
    ),
    outputs,
    sources: sources.map(citeSource),
    ...(limits ? { limits } : {}),
    example
  }
}

export function listText(cards: readonly Calculation[]): string {
  return cards
    .map(
      card =>
        `${card.name.padEnd(22)} ${card.does}\n${' '.repeat(22)} ${Object.keys(card.inputs)
          .map(one => `--${kebab(one)}`)
          .join(' ')}`
    )
    .join('\n')
}
