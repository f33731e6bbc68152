import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { penmanMonteith } from '../../../src/domain/climate/penman-monteith.ts'
import type { Weather } from '../../../src/domain/climate/penman-monteith.ts'
import { clearSkyMj, netLongWaveMj, solarRadiation } from '../../../src/domain/climate/radiation.ts'
import { saturationKpa, vaporKpa } from '../../../src/domain/climate/vapor.ts'
import { windAt2M } from '../../../src/domain/climate/wind.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const SUMMER = { latitudeDeg: 40, dayOfYear: 196, words: 'day 196' }
const WEATHER: Weather = {
  maxC: 30,
  minC: 15,
  elevationM: 100,
  humidity: { by: 'dew-point', dewC: 12 },
  sunlight: { by: 'sunshine', hours: 10 },
  wind: { speedMPerS: 2, heightM: 2 },
  soilHeatMj: 0
}

function etoOf(change: Partial<Weather>, when = SUMMER): number {
  const worked = penmanMonteith({ ...WEATHER, ...change }, when)
  if (!isPresent(worked)) throw new Error(worked.reason)
  return worked.value.etoMm
}

const TYPED = { latitude: '40', month: 'Jul', elevation: '100 m', max: '30 °C', min: '15 °C' }
const typed = (more: Record<string, string>) => calcOrAbsent('eto-penman-monteith', { ...TYPED, ...more })
const etoTyped = (more: Record<string, string>) => calc('eto-penman-monteith', { ...TYPED, ...more })

describe('reference evapotranspiration from weather', () => {
  it('asks for more in drier air, under more sun and with more wind', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(unit, unit, (one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)]
        // In air drier than any desert's, the sky's own cooling by the first trace of vapor outweighs it.
        const humid = (share: number) => etoOf({ humidity: { by: 'mean', mean: 0.1 + 0.9 * share } })
        expect(humid(less)).toBeGreaterThanOrEqual(humid(more) - 1e-9)
        const sunny = (share: number) => etoOf({ sunlight: { by: 'measured', solarMj: 10 + 15 * share } })
        expect(sunny(more)).toBeGreaterThanOrEqual(sunny(less) - 1e-9)
        const windy = (share: number) =>
          etoOf({ humidity: { by: 'mean', mean: 0.3 }, wind: { speedMPerS: 6 * share, heightM: 2 } })
        expect(windy(more)).toBeGreaterThanOrEqual(windy(less) - 1e-9)
      })
    )
  })

  it('never asks for less than nothing, on the dampest winter day', () => {
    const winter = { latitudeDeg: 60, dayOfYear: 349, words: 'day 349' }
    const damp: Partial<Weather> = {
      maxC: 2,
      minC: 1,
      humidity: { by: 'mean', mean: 1 },
      sunlight: { by: 'sunshine', hours: 0 }
    }
    expect(etoOf({ ...damp, soilHeatMj: 5 }, winter)).toBe(0)
  })

  it('counts air as damp as it can be where the dew point lies above the temperatures', () => {
    expect(etoOf({ humidity: { by: 'dew-point', dewC: 40 } })).toBeGreaterThan(0)
  })

  it('says so where the sun does not rise or the temperatures are turned round', () => {
    const worked = penmanMonteith(WEATHER, { latitudeDeg: 80, dayOfYear: 1, words: 'day 1' })
    expect(worked).toMatchObject({ absent: true, reason: 'the sun does not rise on that day' })
    expect(penmanMonteith({ ...WEATHER, maxC: 10 }, SUMMER)).toMatchObject({ absent: true })
  })
})

describe('what stands in for weather that is not known', () => {
  it('is the surest of the humidities given, down to the minimum as dew point', () => {
    const vapor = (more: Record<string, string>) => etoTyped(more)['vapor-pressure'] as number
    const all = { 'humidity-mean': '50 %', 'humidity-max': '90 %', 'humidity-min': '30 %' }
    expect(vapor({})).toBeCloseTo(saturationKpa(15), 9)
    expect(vapor({ 'humidity-mean': '50 %' })).toBeCloseTo((saturationKpa(30) + saturationKpa(15)) / 4, 9)
    expect(vapor({ 'humidity-max': '90 %' })).toBeCloseTo(0.9 * saturationKpa(15), 9)
    expect(vapor(all)).toBeCloseTo((0.9 * saturationKpa(15) + 0.3 * saturationKpa(30)) / 2, 9)
    expect(vapor({ ...all, 'wet-bulb': '18 °C', 'dry-bulb': '25 °C' })).toBeCloseTo(
      vaporKpa({ by: 'wet-bulb', wetC: 18, dryC: 25 }, 30, 15, 100.1).kPa,
      3
    )
    expect(vapor({ ...all, 'dew-point': '12 °C' })).toBeCloseTo(saturationKpa(12), 9)
    expect(vapor({ ...all, 'dew-point': '12 °C', 'vapor-pressure': '1.5 kPa' })).toBeCloseTo(1.5, 9)
  })

  it('is sunshine, or the range of temperature, more at the coast, and never more than a clear day', () => {
    const sun = (more: Record<string, string>) => etoTyped(more)['solar-radiation'] as number
    expect(sun({ setting: 'coast' }) / sun({})).toBeCloseTo(0.19 / 0.16, 9)
    expect(sun({ sunshine: '0 h' })).toBeLessThan(sun({ sunshine: '10 h' }))
    expect(sun({ sunshine: '24 h' })).toBeCloseTo(sun({ sunshine: '15 h' }), 9)
    const day = { extraterrestrialMj: 40, daylightH: 14, clearMj: clearSkyMj(40, 0), rangeC: 36 }
    expect(solarRadiation({ by: 'temperature', setting: 'coast' }, day).solarMj).toBe(30)
  })

  it('is a wind of 2 m/s, and one measured higher is brought down', () => {
    expect(etoTyped({})['wind-2m']).toBe(2)
    expect(etoTyped({ wind: '2 m/s' })['wind-2m']).toBe(2)
    expect(windAt2M({ speedMPerS: 3, heightM: 10 })).toBeLessThan(3)
    expect(windAt2M({ speedMPerS: 3, heightM: 1 })).toBeGreaterThan(3)
    expect(windAt2M({ speedMPerS: 3, heightM: 2.001 })).toBeCloseTo(3, 2)
    // 4.87 / ln(67.8 × 3 − 5.42) by hand.
    expect(windAt2M({ speedMPerS: 1, heightM: 3 })).toBeCloseTo(0.92092, 4)
  })

  it('holds cloud to a third at the darkest and a clear day at the brightest', () => {
    expect(netLongWaveMj(30, 15, 1.5, 0.1)).toBe(netLongWaveMj(30, 15, 1.5, 0.3))
    expect(netLongWaveMj(30, 15, 1.5, 1.2)).toBe(netLongWaveMj(30, 15, 1.5, 1))
  })

  it('is no soil heat, or that from the months beside it', () => {
    const eto = (more: Record<string, string>) => etoTyped(more)['eto'] as number
    expect(eto({ 'previous-mean': '20 °C', 'next-mean': '20 °C' })).toBe(eto({}))
    expect(eto({ 'previous-mean': '18 °C' })).toBeLessThan(eto({}))
    expect(eto({ 'previous-mean': '18 °C', 'next-mean': '26 °C' })).toBeLessThan(eto({}))
  })
})

describe('eto-penman-monteith, as typed', () => {
  it('reads US and metric units alike', () => {
    const metric = etoTyped({ wind: '2.235 m/s', 'solar-radiation': '25.92 MJ/m²/d' })['eto'] as number
    const us = calc('eto-penman-monteith', {
      ...TYPED,
      elevation: '328.08 ft',
      max: '86 °F',
      min: '59 °F',
      wind: '5 mph',
      'solar-radiation': '300 W/m²'
    })['eto'] as number
    expect(us).toBeCloseTo(metric, 3)
  })

  it('refuses radiation in water a day, wind without a unit, and halves that lack their other half', () => {
    expect(typed({ 'solar-radiation': '10 mm/d' })).toContain('“mm/d” measures an application rate')
    expect(typed({ wind: '2' })).toContain('has no unit')
    expect(typed({ 'wet-bulb': '18 °C' })).toBe('wet-bulb and dry-bulb go together')
    expect(typed({ 'wet-bulb': '26 °C', 'dry-bulb': '25 °C' })).toContain('warmer than the dry bulb')
    expect(typed({ 'humidity-min': '30 %' })).toBe('humidity-min needs humidity-max')
    expect(typed({ 'humidity-min': '60 %', 'humidity-max': '50 %' })).toContain('more than humidity-max')
    expect(typed({ 'humidity-mean': '101 %' })).toContain('cannot be more than 100 %')
    expect(typed({ 'next-mean': '20 °C' })).toBe('next-mean needs previous-mean')
    expect(typed({ 'wind-height': '10 m' })).toBe('wind-height needs wind')
    expect(typed({ wind: '2 m/s', 'wind-height': '0.05 m' })).toContain('at least 0.1 m')
    expect(typed({ 'humidity-mean': '100 %' })).toHaveProperty('eto')
  })

  it('gives the month only where a month is asked for', () => {
    expect(etoTyped({})['in-month']).toBeCloseTo((etoTyped({})['eto'] as number) * 31, 9)
    const { month: _, ...rest } = TYPED
    expect(calc('eto-penman-monteith', { ...rest, date: '2026-07-15' })).not.toHaveProperty('in-month')
  })
})
