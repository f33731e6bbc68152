import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COPPER, IEC_COPPER, NEC_COPPER } from '../../reference/copper.ts'
import type { SourceId } from '../../reference/sources.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { figures } from '../figures.ts'
import { ambiguousReason } from './ambiguous-reason.ts'
import { awgAreaMm2, circleAreaMm2 } from './awg.ts'
import { solidCopperOhmPerM } from './copper.ts'
import { iecOhmPerM } from './iec.ts'
import type { WireMake } from './make.ts'
import { necOhmPerM } from './nec.ts'

/** Resistance of one wire with the words that say where it comes from: "IEC 60228, class 1 and 2, plain copper, at 20 °C". */
export interface WireResistance {
  readonly ohmPerM: number
  readonly basis: string
  readonly source: SourceId
}

/** Outside these the straight-line factor for copper is not used. */
const LEAST_C = -60
const MOST_C = 200

/** Stranded wire is about 2 % longer than it looks: 1.98/1.93 and 3.14/3.07 in the NEC table. For gauges that the table does not print. */
const STRANDING = 1.02

/**
 * One wire's resistance per meter. AWG solid by formula and 100 % IACS copper; AWG stranded or tinned from NEC table 8; IEC 60228 sizes
 * by that table's maxima; any other area, or a diameter, as solid copper. A pair counts by its gauge. Absent for a bare "mm", for tinned
 * gauges that the table does not print, and outside −60 to 200 °C. Each table is moved from its own base temperature by its own factor.
 */
export function resistancePerM(size: WireSize, make: WireMake, temperatureC: number): Maybe<WireResistance> {
  if (temperatureC < LEAST_C || temperatureC > MOST_C)
    return absent(
      `${figures(temperatureC, 3)} °C is outside ${LEAST_C} to ${MOST_C} °C, where the factor for copper holds`
    )
  switch (size.kind) {
    case 'ambiguous':
      return absent(ambiguousReason(size.mm))
    case 'awg':
    case 'pair':
      return ofGauge(size.gauge, make, temperatureC)
    case 'diameter':
      return ofSection(circleAreaMm2(size.mm), temperatureC)
    case 'area':
      return ofArea(size.mm2, make, temperatureC)
  }
}

function ofGauge(gauge: number, make: WireMake, temperatureC: number): Maybe<WireResistance> {
  const copper = solidCopperOhmPerM(awgAreaMm2(gauge)) * fromBase(COPPER, temperatureC)
  if (make.conductor === 'solid' && make.coating === 'plain')
    return { ohmPerM: copper, basis: `AWG formula, solid copper, ${at(temperatureC, COPPER)}`, source: 'astm-b258' }
  const table = necOhmPerM(gauge, make, temperatureC)
  if (table)
    return { ohmPerM: table.ohmPerM, basis: `${table.words}, ${at(temperatureC, NEC_COPPER)}`, source: 'nec-ch9-t8' }
  if (make.coating === 'plain')
    return {
      ohmPerM: copper * STRANDING,
      basis: `AWG formula and 2 % for stranding (rule of this project), ${at(temperatureC, COPPER)}`,
      source: 'project-rule'
    }
  const name = showWireSize({ kind: 'awg', gauge })
  return absent(`no table here has tinned ${make.conductor} ${name}; measure the run, or count it as plain`)
}

function ofArea(mm2: number, make: WireMake, temperatureC: number): Maybe<WireResistance> {
  const table = iecOhmPerM(mm2, make)
  if (!table) return ofSection(mm2, temperatureC)
  const ohmPerM = table.ohmPerM * fromBase(IEC_COPPER, temperatureC)
  return { ohmPerM, basis: `${table.words}, ${at(temperatureC, IEC_COPPER)}`, source: 'iec-60228' }
}

function ofSection(mm2: number, temperatureC: number): WireResistance {
  const ohmPerM = solidCopperOhmPerM(mm2) * fromBase(COPPER, temperatureC)
  return { ohmPerM, basis: `solid copper, 1/58 Ω·mm²/m, ${at(temperatureC, COPPER)}`, source: 'nbs-100' }
}

function fromBase(copper: { readonly baseC: number; readonly perC: number }, temperatureC: number): number {
  return 1 + copper.perC * (temperatureC - copper.baseC)
}

function at(temperatureC: number, copper: { readonly baseC: number; readonly perC: number }): string {
  const there = `at ${figures(temperatureC, 3)} °C`
  return temperatureC === copper.baseC ? there : `${there} (from ${copper.baseC} °C by ${copper.perC} per °C)`
}
