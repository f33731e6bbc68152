import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../src/base/absent.ts'
import { awgAreaMm2, awgDiameterM, gaugeOfDiameter } from '../../src/domain/wire/awg.ts'
import { resistancePerM } from '../../src/domain/wire/resistance.ts'
import { capacitorJ } from '../../src/domain/power/pulse-charge.ts'
import { DIMENSIONS } from '../../src/units/dimension.ts'
import type { Dimension } from '../../src/units/dimension.ts'
import { quantity } from '../../src/units/quantity.ts'
import { expectClose } from '../support/close.ts'

const found = spawnSync('units', ['--version'], { encoding: 'utf8' }).status === 0
const who = found
  ? 'GNU units on this machine'
  : 'GNU units is NOT on this machine: figures it printed elsewhere (2.22)'

/** What the program answers, or what version 2.22 answered where it is not installed. */
function units(from: string, to: string, printed: number): number {
  if (!found) return printed
  const answer = spawnSync('units', ['-t', from, to], { encoding: 'utf8' }).stdout.trim()
  const value = Number(answer)
  if (!Number.isFinite(value)) throw new Error(`units said “${answer}” to ${from} in ${to}`)
  // The program must be the one that the printed figures came from, or both are in doubt.
  expectClose(value, printed, 0.001)
  return value
}

function ohmPerM(gauge: number): number {
  const wire = resistancePerM({ kind: 'awg', gauge }, { conductor: 'solid', coating: 'plain' }, 20)
  if (!isPresent(wire)) throw new Error(wire.reason)
  return wire.ohmPerM
}

const feet = (value: number) => quantity(value, 'ft', 'length').si

describe(`wire by a second program, ${who} (8 values)`, () => {
  // Eight printed digits against double precision: 0.0001 %.
  it('12 AWG is 2.0525254 mm and 3.3087729 mm²', () => {
    expectClose(awgDiameterM(12) * 1000, units('wiregauge(12)', 'mm', 2.0525254), 1e-4)
    expectClose(awgAreaMm2(12), units('circlearea(awg(12)/2)', 'mm^2', 3.3087729), 1e-4)
  })

  it('2.0525254 mm is 12 AWG, and 4/0 is 0.46 in', () => {
    expectClose(gaugeOfDiameter(0.0020525254), units('2.0525254 mm', 'wiregauge', 12), 1e-4)
    expectClose(awgDiameterM(-3) / 0.0254, units('wiregauge(-3)', 'in', 0.46), 1e-4)
  })

  it('1000 ft of 12 AWG is 1.5882542 Ω at 20 °C, and the loop of 2200 ft is 6.9883185 Ω', () => {
    const one = units('1000 ft/(circlearea(awg(12)/2) copperconductivity)', 'ohm', 1.5882542)
    expectClose(ohmPerM(12) * feet(1000), one, 1e-4)
    const loop = units('2*2200 ft/(circlearea(awg(12)/2) copperconductivity)', 'ohm', 6.9883185)
    expectClose(2 * ohmPerM(12) * feet(2200), loop, 1e-4)
  })

  it('7 Ω allows 548.15783 ft of 18 AWG, and 4700 µF at 12 V holds 0.3384 J', () => {
    const longest = units('7 ohm*circlearea(awg(18)/2) copperconductivity/2', 'ft', 548.15783)
    expectClose(7 / (2 * ohmPerM(18)) / feet(1), longest, 1e-4)
    expectClose(capacitorJ(0.0047, 12), units('0.5*4700 microF*(12 V)^2', 'J', 0.3384), 1e-4)
  })
})

/** Spelling of ours, expression of the other program, its coherent unit, and what it answered. */
const CONVERSIONS: readonly (readonly [Dimension, string, string, string, number])[] = [
  ['length', 'ft', 'ft', 'm', 0.3048],
  ['length', 'in', 'in', 'm', 0.0254],
  ['length', 'yd', 'yd', 'm', 0.9144],
  ['area', 'ft²', 'ft^2', 'm^2', 0.09290304],
  ['area', 'acre', 'acre', 'm^2', 4046.8564],
  ['area', 'ha', 'hectare', 'm^2', 10000],
  ['volume', 'gal', 'gallon', 'm^3', 0.0037854118],
  ['volume', 'ft³', 'ft^3', 'm^3', 0.028316847],
  ['flow', 'gpm', 'gallon/min', 'm^3/s', 6.3090196e-5],
  ['flow', 'L/min', 'liter/min', 'm^3/s', 1.6666667e-5],
  ['flow', 'L/h', 'liter/hour', 'm^3/s', 2.7777778e-7],
  ['pressure', 'psi', 'psi', 'Pa', 6894.7573],
  ['pressure', 'bar', 'bar', 'Pa', 100000],
  ['resistance-per-length', 'ohm/kft', 'ohm/(1000 ft)', 'ohm/m', 0.0032808399],
  ['charge', 'mAh', 'milliampere hour', 'coulomb', 3.6],
  ['rate', 'in/h', 'in/hour', 'm/s', 7.0555556e-6],
  ['force', 'lbf', 'lbf', 'N', 4.4482216],
  ['speed', 'mph', 'mile/hour', 'm/s', 0.44704],
  ['speed', 'km/h', 'km/hour', 'm/s', 0.27777778],
  ['radiation', 'MJ/m²/d', 'MJ/(m^2 day)', 'W/m^2', 11.574074],
  ['duration', 'h', 'hour', 's', 3600]
]

describe(`units by a second program, ${who} (${CONVERSIONS.length} values)`, () => {
  it.each(CONVERSIONS)('%s: 1 %s', (dimension, unit, expression, coherent, printed) => {
    expectClose(quantity(1, unit, dimension).si, units(expression, coherent, printed), 1e-4)
    expect(Object.hasOwn(DIMENSIONS[dimension].units, unit)).toBe(true)
  })
})
