import type { Dimension } from '../units/dimension.ts'
import type { SourceId } from '../reference/sources.ts'
import type { Maybe } from '../base/absent.ts'

/**
 * What an input of a calculation may be. `quantity` inputs are handed over as numbers in the coherent unit of their
 * dimension (m, Ω, V, s, ratio as a fraction); the others as the parsed value.
 */
export type InputKind =
  | { readonly is: 'quantity'; readonly dimension: Dimension }
  | { readonly is: 'wire-size' }
  | { readonly is: 'count' }
  | { readonly is: 'number' }
  | { readonly is: 'date' }
  | { readonly is: 'interval' }
  | { readonly is: 'choice'; readonly of: readonly string[] }
  | { readonly is: 'text' }

export interface InputSpec {
  readonly kind: InputKind
  readonly does: string
  /** Left out by the caller: the calculation says what it takes instead; undefined means that it must be given. */
  readonly optional?: string
}

export interface OutputSpec {
  readonly does: string
  /** Unit of the value handed back ("ohm", "m", "V", "days"); "" for plain text. */
  readonly unit: string
}

/** One output as printed by `calc`. */
export type OutputValue = number | string | boolean

/** A result with the lines that show how it came about, in the order of the arithmetic. */
export interface Worked<O> {
  readonly value: O
  readonly steps: readonly string[]
}

/**
 * The card of a calculation. `calc`, `explain`, the binder's appendix and the tests all read it; `run` is the only way in for
 * them, so that what they show is what plan() computed. `A` are the arguments after parsing, `undefined` where left out.
 */
export interface Calculation {
  readonly name: string
  readonly title: string
  /** One or two sentences: what it answers. */
  readonly does: string
  readonly inputs: Readonly<Record<string, InputSpec>>
  readonly outputs: Readonly<Record<string, OutputSpec>>
  readonly sources: readonly SourceId[]
  /** What the reader should know about its limits. */
  readonly limits?: string
  readonly run: (inputs: CalculationInputs) => Maybe<Worked<Readonly<Record<string, OutputValue>>>>
  /** A worked case: inputs as a person types them, outputs as numbers in the output's unit. Run by a test. */
  readonly example: {
    readonly inputs: Readonly<Record<string, string>>
    readonly outputs: Readonly<Record<string, OutputValue>>
  }
}

/** Parsed inputs by name. The accessor functions in `inputs.ts` narrow them. */
export type CalculationInputs = Readonly<Record<string, unknown>>
