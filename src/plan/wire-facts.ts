import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { OutputLimit } from '../domain/wire/limit.ts'
import { parallelOhm } from '../domain/wire/parallel.ts'
import type { RunSegment } from '../domain/wire/run.ts'
import { sum } from '../base/collections.ts'
import type { ProductSheet, Splice, Valve, WireSegment } from '../model/site.ts'
import type { Quantity } from '../units/quantity.ts'

/** A pair of wires with what hangs on it: a station's, or the master valve's. */
export interface WireFacts {
  readonly id: string
  readonly valves: readonly Valve[]
  readonly wire: readonly WireSegment[]
  readonly splices: readonly Splice[]
  readonly sheet?: ProductSheet
}

/** A limit of the sheet beside the quantity that states it. */
export interface StatedLimit {
  readonly limit: OutputLimit
  readonly stated: Quantity
}

const FEET: readonly string[] = ['ft', 'in', 'yd', "'", '"']

export const lengthUnit = (length: Quantity<'length'>): 'm' | 'ft' => (FEET.includes(length.unit) ? 'ft' : 'm')

export function runSegments(wire: readonly WireSegment[]): readonly RunSegment[] {
  return wire.map(({ size, length, common, conductor, coating }) => ({
    size,
    lengthM: length.si,
    unit: lengthUnit(length),
    make: { conductor, coating },
    ...(common === undefined ? {} : { common })
  }))
}

/** The coil, or coils side by side; absent where one of them is not stated. */
export function coilsOhm(valves: readonly Valve[]): Maybe<number> {
  return together(valves.map(valve => valve.coilResistance?.si))
}

/** The closing windings of coils with three leads; undefined where no coil has them. */
export function closingOhm(valves: readonly Valve[]): Maybe<number> | undefined {
  if (!valves.some(valve => valve.coil === 'DC latching 3-wire')) return undefined
  return together(valves.map(valve => (valve.closingResistance ?? valve.coilResistance)?.si))
}

export const splicesOhm = (splices: readonly Splice[]): number => sum(splices.map(one => one.resistance?.si ?? 0))

function together(ohms: readonly (number | undefined)[]): Maybe<number> {
  if (ohms.length === 0) return absent('no valve is recorded')
  const known = ohms.filter(ohm => ohm !== undefined)
  if (known.length < ohms.length) return absent('the coil resistance is not stated')
  return known.every(ohm => ohm > 0) ? parallelOhm(known) : absent('a coil of 0 Ω is stated')
}

/** The valve that asks for most; one output must satisfy all of its coils. */
export function lowestVolts(valves: readonly Valve[]): Quantity<'voltage'> | undefined {
  return valves
    .map(valve => valve.lowestVolts)
    .filter(volts => volts !== undefined)
    .reduce<Quantity<'voltage'> | undefined>((most, one) => (most && most.si >= one.si ? most : one), undefined)
}

/** What the product sheet states, in the order voltage, loop, lengths. A limit by voltage needs the pulse, the coil and its lowest volts. */
export function statedLimits({ sheet, valves }: WireFacts, coilOhm: Maybe<number>): readonly StatedLimit[] {
  if (!sheet) return []
  const limits: StatedLimit[] = []
  const coils = Math.max(1, valves.length)
  const lowest = lowestVolts(valves)
  const pulseVolt = sheet.pulseVolts?.si
  if (pulseVolt !== undefined && lowest && lowest.si > 0 && typeof coilOhm === 'number')
    limits.push({ limit: { form: 'voltage', pulseVolt, lowestVolt: lowest.si, coilOhm }, stated: lowest })
  if (sheet.loopLimit) limits.push({ limit: { form: 'loop', ohm: sheet.loopLimit.si, coils }, stated: sheet.loopLimit })
  for (const { size, length } of sheet.lengthLimits) {
    const limit = { form: 'length', lengthM: length.si, unit: lengthUnit(length), coils } as const
    limits.push({ limit: size === undefined ? limit : { ...limit, size }, stated: length })
  }
  return limits
}
