import type { Dimension } from '../../src/units/dimension.ts'
import type {
  Controller,
  LengthLimit,
  ProductSheet,
  Program,
  Station,
  Valve,
  WireSegment
} from '../../src/model/site.ts'
import { parseQuantity } from '../../src/units/quantity.ts'
import type { Quantity } from '../../src/units/quantity.ts'
import { parseWireSize } from '../../src/units/wire-size.ts'
import type { WireSize } from '../../src/units/wire-size.ts'
import { bareController, bareStation } from '../support/bare-site.ts'

const AT = { file: 'sites/bare/site.md', path: [] }

/** A quantity as a site file writes it; throws on a slip in the test. */
export function stated<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  const parsed = parseQuantity(text, dimension)
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem.kind}`)
  return parsed.value
}

export function size(text: string): WireSize {
  const parsed = parseWireSize(text)
  if (!parsed) throw new Error(`${text} is no wire size`)
  return parsed
}

export const sheet = (facts: Partial<ProductSheet> = {}): ProductSheet => ({
  at: AT,
  path: '_shared/sheets/plain.md',
  title: 'Plain sheet',
  lengthLimits: [],
  prose: '',
  ...facts
})

export const pulseSheet = (volts: string, facts: Partial<ProductSheet> = {}): ProductSheet =>
  sheet({ pulseVolts: stated(volts, 'voltage'), ...facts })

export const lengthLimit = (length: string, at?: string): LengthLimit => ({
  at: AT,
  length: stated(length, 'length'),
  ...(at === undefined ? {} : { size: size(at) })
})

export const valve = (coil?: string, lowest?: string): Valve => ({
  at: AT,
  ...(coil === undefined ? {} : { coilResistance: stated(coil, 'resistance') }),
  ...(lowest === undefined ? {} : { lowestVolts: stated(lowest, 'voltage') })
})

export const wire = (text: string, length: string, facts: Partial<WireSegment> = {}): WireSegment => ({
  at: AT,
  size: size(text),
  length: stated(length, 'length'),
  conductor: 'solid',
  coating: 'plain',
  ...facts
})

export const station = (facts: Partial<Station>): Station => ({ ...bareStation(), ...facts })

export const controller = (facts: Partial<Controller>): Controller => bareController(facts)

export const program = (facts: Partial<Program> & { readonly stations?: Program['stations'] }): Program => ({
  at: AT,
  id: 'A',
  days: { kind: 'every-day' },
  starts: [360],
  stations: [],
  ...facts
})

/** Stations 1 to n with one cycle each. */
export const cyclesOf = (count: number, cycles = 1): Program['stations'] =>
  Array.from({ length: count }, (_, index) => ({
    at: AT,
    number: index + 1,
    runTime: { cycles, cycleS: 600, soakS: cycles > 1 ? 600 : 0 }
  }))
