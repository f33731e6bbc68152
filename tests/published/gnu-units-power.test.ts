import { spawnSync } from 'node:child_process'
import { describe, it } from 'vitest'
import { fullSunHours } from '../../src/domain/power/solar-month.ts'
import { capacitorPulseMah, directPulseMah } from '../../src/domain/power/pulse-charge.ts'
import { lifeDays } from '../../src/domain/power/life.ts'
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
  expectClose(value, printed, 0.001)
  return value
}

describe(`charge and energy by a second program, ${who} (12 values)`, () => {
  // Eight printed digits against double precision: 0.0001 %.
  it.each([
    [25, 'mC', 'charge', '25 millicoulomb', 'coulomb', 0.025],
    [40, 'µC', 'charge', '40 microcoulomb', 'coulomb', 4e-5],
    [550, 'mAh', 'charge', '550 milliampere hour', 'coulomb', 1980],
    [1.2, 'Ah', 'charge', '1.2 ampere hour', 'coulomb', 4320],
    [13.2, 'Wh', 'energy', '13.2 watt hour', 'joule', 47520],
    [480, 'mJ', 'energy', '480 millijoule', 'joule', 0.48],
    [30, 'mW', 'power', '30 milliwatt', 'watt', 0.03],
    [12, 'µA', 'current', '12 microampere', 'ampere', 1.2e-5]
  ] as const)('%d %s of %s is %s in %s', (value, unit, dimension, from, to, printed) => {
    const mine = quantity<Dimension>(value, unit, dimension).si
    expectClose(mine, units(from, to, printed), 1e-4)
  })

  it('a pulse of 500 mA for 60 ms is 0.0083333 mAh, and 4700 µF to 12 V from 9 V at 70 % 0.014921 mAh', () => {
    expectClose(
      directPulseMah(0.5, 0.06),
      units('500 milliampere * 60 millisecond', 'milliampere hour', 0.0083333333),
      1e-4
    )
    const booster = units('0.5*4700 microF*(12 V)^2/(0.7*9 V)', 'milliampere hour', 0.014920635)
    expectClose(capacitorPulseMah(0.0047, 12, 0.7, 9), booster, 1e-4)
  })

  it('385 mAh at 12 µA last 1336.8 days, and 3.6 MJ/m² are an hour of 1,000 W/m²', () => {
    const days = units('385 milliampere hour / (12 microampere)', 'day', 1336.8056)
    expectClose(lifeDays({ capacityMah: 385, usable: 1, drawnMahPerDay: 24 * 0.012, yearlyLoss: 0 }), days, 1e-4)
    expectClose(fullSunHours(3.6), units('3.6 megajoule/m^2 / (1000 watt/m^2)', 'hour', 1), 1e-4)
  })
})
