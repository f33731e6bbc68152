import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Absent } from '../../src/base/absent.ts'
import { sum } from '../../src/base/collections.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { ClimatePlan } from '../../src/plan/climate-plan.ts'
import { addDays, date, epochDay } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

const CSV = 'sites/base/days.csv'

function planOf(keys: string, csv?: string) {
  const tables = csv === undefined ? [] : [{ file: CSV, text: csv }]
  const { site, faults } = loadSite({ ...baseSite(keys), tables })
  if (!site || faults.some(one => one.place.file === CSV)) throw new Error(JSON.stringify(faults))
  return makePlan(site, date(BASE_ON))
}

const climateOf = (keys: string, csv?: string): ClimatePlan => planOf(keys, csv).climate
const mm = (value: unknown): number => Number(((value as number) * 1000).toFixed(6))
const ets = (climate: ClimatePlan): number[] => climate.months.map(one => mm(one.etM))

const HIGH = 'mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C'
const LOW = 'mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C'
const FULL = `${HIGH}, ${LOW}, humidity: 85 82 78 74 72 73 74 76 79 83 85 86 %, wind: 3.4 3.3 3.2 2.8 2.6 2.4 2.4 2.3 2.5 2.8 3.1 3.2 m/s, sunshine: 1.6 2.5 3.5 5.0 6.1 5.9 5.7 5.3 4.2 2.9 1.9 1.4 h`
const HAND = 'reference-et: 14 20 40 62 90 105 112 92 58 32 16 11 mm'

describe('reference evapotranspiration of a month', () => {
  it('is what is stated, before anything computed', () => {
    const climate = climateOf(`climate: { ${HAND}, eto-zone: 12, ${FULL} }\n`)
    expect(ets(climate)).toEqual([14, 20, 40, 62, 90, 105, 112, 92, 58, 32, 16, 11])
    expect(climate.ways).toEqual(['by-hand', 'weather', 'zone-table', 'temperatures'])
    expect(new Set(climate.months.map(one => one.way))).toEqual(new Set(['by-hand']))
  })

  it('is computed for the months that nobody states', () => {
    const { months } = climateOf(`climate: { reference-et: { Jul: 118 mm }, ${HIGH}, ${LOW} }\n`)
    expect(months.map(one => one.way).filter(way => way === 'temperatures')).toHaveLength(11)
    expect(months[6]).toMatchObject({ way: 'by-hand' })
    expect(months[6]?.off).toBeUndefined()
    expect(months[5]).toMatchObject({ way: 'temperatures', off: 0.2 })
  })

  it('comes from the zone table, whose row adds up to the total printed with it', () => {
    const climate = climateOf('climate: { eto-zone: 8 }\n')
    expect(sum(ets(climate)) / 25.4).toBeCloseTo(49.42, 6)
    expect(climate).toMatchObject({ zone: 8, ways: ['zone-table'] })
  })

  it('comes from weather where all of it is known, and else from temperatures, saying what lacks', () => {
    expect(climateOf(`climate: { ${FULL} }\n`)).toMatchObject({ ways: ['weather', 'temperatures'], lacks: [] })
    const without = climateOf(`climate: { ${FULL.replace(/wind: .*?m\/s, /u, '')} }\n`)
    expect(without).toMatchObject({ ways: ['temperatures'], lacks: ['wind'] })
    const nowhere = climateOf(`climate: { ${FULL} }\nlocation: { latitude: 54.97 }\n`)
    expect(nowhere.lacks).toEqual(['elevation'])
    expect(nowhere.months[6]).toMatchObject({ way: 'temperatures' })
  })

  it('is higher in wind measured at 2 m than in the same wind at 10 m', () => {
    const at = (height: string) => ets(climateOf(`climate: { ${FULL}, wind-height: ${height} }\n`))[6] ?? 0
    expect(at('2 m')).toBeGreaterThan(at('10 m'))
    expect(at('2 m')).toBe(ets(climateOf(`climate: { ${FULL} }\n`))[6])
  })

  it('turns round with the hemisphere', () => {
    const even = 'mean-high: 20 20 20 20 20 20 20 20 20 20 20 20 °C, mean-low: 10 10 10 10 10 10 10 10 10 10 10 10 °C'
    const at = (latitude: number) => ets(climateOf(`climate: { ${even} }\nlocation: { latitude: ${latitude} }\n`))
    const [north, south] = [at(35), at(-35)]
    expect((north[6] ?? 0) > (north[0] ?? 0)).toBe(true)
    expect((south[0] ?? 0) > (south[6] ?? 0)).toBe(true)
  })

  it('is absent with the reason where a half is missing, or the sun does not rise', () => {
    const reason = (keys: string, month = 6) => (climateOf(keys).months[month]?.etM as Absent).reason
    expect(reason('climate: { effective-rain: none }\n')).toBe(
      'no reference evapotranspiration is stated for the month'
    )
    expect(reason(`climate: { ${HIGH}, ${LOW} }\nlocation: { elevation: 3 m }\n`)).toBe(
      'the latitude of the site is not stated'
    )
    expect(reason(`climate: { mean-high: { Jul: 20 °C }, ${LOW} }\n`, 5)).toContain('mean high or mean low')
    expect(climateOf(`climate: { ${FULL} }\nlocation: { latitude: 72, elevation: 3 m }\n`).months[11]).toMatchObject({
      way: 'temperatures'
    })
  })

  it('never falls when the month is hotter by the same spread', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 35, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (low, more) => {
          const et = (shift: number) => {
            const keys = `climate: { mean-high: { Jul: ${(low + 11 + shift).toFixed(3)} °C }, mean-low: { Jul: ${(low + shift).toFixed(3)} °C } }\n`
            return ets(climateOf(keys))[6] ?? 0
          }
          expect(et(more)).toBeGreaterThanOrEqual(et(0) - 1e-6)
        }
      ),
      { numRuns: 40 }
    )
  })
})

/** A record of so many days from a first day, each line made by its number. */
function record(head: string, first: string, count: number, cells: (index: number) => string): string {
  const from = date(first)
  const lines = Array.from({ length: count }, (_, index) => `${addDays(from, index)},${cells(index)}`)
  return [`date,${head}`, ...lines].join('\n')
}

describe('a daily record', () => {
  const keys = (more = '') => `climate: { daily-weather: days.csv${more} }\n`

  it('gives each month the mean of its days times the days of the month', () => {
    const year = record('high (°C),low (°C)', '2025-01-01', 365, () => '20,10')
    const climate = climateOf(keys(), year)
    expect(climate.record).toEqual({ days: 365, first: '2025-01-01', last: '2025-12-31' })
    expect(climate.ways).toEqual(['daily-temperatures'])
    const mid = ets(climateOf('climate: { mean-high: { Jul: 20 °C }, mean-low: { Jul: 10 °C } }\n'))[6] ?? 0
    // Days of July against its 15th: the sun changes little over a month.
    expect(Math.abs((ets(climate)[6] ?? 0) - mid)).toBeLessThan(1.5)
    expect(climate.months[6]).toMatchObject({ way: 'daily-temperatures', days: 31, off: 0.2 })
  })

  it('counts several years as one, and gaps not at all', () => {
    const two = record('high (°C),low (°C)', '2024-01-01', 731, index => (index % 3 === 0 ? ',' : '20,10'))
    const one = record('high (°C),low (°C)', '2024-01-01', 731, () => '20,10')
    expect(Math.abs((ets(climateOf(keys(), two))[1] ?? 0) - (ets(climateOf(keys(), one))[1] ?? 0))).toBeLessThan(0.5)
    expect(climateOf(keys(), two).record?.days).toBe(731)
  })

  it('takes a month from ten days on, and not from nine', () => {
    const days = (count: number) => record('high (°C),low (°C)', '2025-07-01', count, () => '20,10')
    expect(climateOf(keys(), days(10)).months[6]).toMatchObject({ days: 10 })
    expect(mm(climateOf(keys(), days(10)).months[6]?.etM)).toBeGreaterThan(0)
    expect((climateOf(keys(), days(9)).months[6]?.etM as Absent).reason).toBe(
      'only 9 days of the month are on record; 10 are due'
    )
  })

  it('uses the weather of the days that have all of it, and leaves the rest of the month out', () => {
    const head = 'high (°C),low (°C),humidity (%),wind (m/s),solar radiation (MJ/m²/d)'
    const all = record(head, '2025-07-01', 31, () => '24,12,60,2,20')
    const some = record(head, '2025-07-01', 31, index => (index < 20 ? '24,12,60,2,20' : '24,12,,,'))
    const first = record(head, '2025-07-01', 20, () => '24,12,60,2,20')
    expect(climateOf(keys(), all).months[6]).toMatchObject({ way: 'daily-weather', days: 31 })
    expect(climateOf(keys(), some).months[6]).toMatchObject({ way: 'daily-weather', days: 20 })
    expect(ets(climateOf(keys(), some))[6]).toBe(ets(climateOf(keys(), first))[6])
  })

  it('gives rain by the month, and counts each day as one rain', () => {
    // 1 mm counts for nothing, 10 mm less its first tenth of an inch in full: 7.46 mm.
    const rain = record('rain (mm)', '2025-06-01', 30, index => (index % 3 === 0 ? '10' : '1'))
    const climate = climateOf(keys(', effective-rain: per-event, reference-et: { Jun: 100 mm }'), rain)
    expect(mm(climate.months[5]?.rainM)).toBeCloseTo(120, 6)
    expect(mm(climate.months[5]?.effectiveRainM)).toBeCloseTo(74.6, 6)
  })

  it('leaves rain that is stated alone', () => {
    const rain = record('rain (mm)', '2025-06-01', 30, () => '10')
    const climate = climateOf(keys(', rain: { Jun: 44 mm }, effective-rain: scs'), rain)
    expect(mm(climate.months[5]?.rainM)).toBe(44)
  })

  it('of 18 years is taken whole', () => {
    const long = record('high (°C),low (°C),humidity (%),wind (m/s),sunshine (h)', '2003-01-01', 6575, index => {
      const warm = 15 - 10 * Math.cos((2 * Math.PI * (epochDay(date('2003-01-01')) + index)) / 365.25)
      return `${(warm + 6).toFixed(1)},${(warm - 5).toFixed(1)},70,2.5,6`
    })
    const climate = climateOf(keys(), long)
    expect(climate.record?.days).toBe(6575)
    expect(climate.months.map(one => one.days)[1]).toBe(509)
  })
})

describe('rain that counts', () => {
  const RAIN = 'rain: 95 70 68 55 58 70 72 88 80 105 104 108 mm'
  const counted = (method: string, place = '') =>
    climateOf(`climate: { ${HAND}, ${RAIN}, effective-rain: ${method} }\n${place}`).months[6]?.effectiveRainM

  it('is none unless a method is named', () => {
    expect(climateOf(`climate: { ${HAND}, ${RAIN} }\n`).months[6]?.effectiveRainM).toBe(0)
    expect(counted('none')).toBe(0)
  })

  it('goes by the method, by its short name too', () => {
    expect(mm(counted('scs-monthly'))).toBeCloseTo((72 * (125 - 14.4)) / 125, 6)
    expect(counted('FAO 46')).toBe(counted('scs-monthly'))
    expect(mm(counted('quarter-of-annual'))).toBeCloseTo(18, 6)
    expect(counted('25 %')).toBe(counted('quarter-of-annual'))
    expect(mm(counted('fao-manual-3'))).toBeCloseTo(33.2, 6)
  })

  it('is none under glass, whatever the method', () => {
    for (const method of ['none', 'scs', 'tr-21', 'per-event']) expect(counted(method, 'place: glasshouse\n')).toBe(0)
  })

  it('by what the soil stores is told for each zone', () => {
    const plan = planOf(`climate: { ${HAND}, ${RAIN}, effective-rain: tr-21 }\n`)
    expect((plan.climate.months[6]?.effectiveRainM as Absent).reason).toContain('for each zone')
    const [shrubs, lawn] = ['K1/1', 'K1/2'].map(id => mm(plan.water.get(id)?.need.months[6]?.rainM))
    expect(shrubs).toBeGreaterThan(0)
    expect(shrubs).toBeLessThanOrEqual(56)
    expect(lawn).not.toBe(shrubs)
    expect(plan.workings.some(one => one.calculation === 'effective-rain' && one.subject.startsWith('K1/1'))).toBe(true)
  })
})

describe('the workings of the climate', () => {
  const named = (keys: string, csv?: string) =>
    planOf(keys, csv)
      .workings.filter(one => /^eto|month-from-days|effective-rain/u.test(one.calculation))
      .map(one => `${one.calculation} ${one.subject}`)

  it('show each way for the month that has most', () => {
    expect(named(`climate: { ${HIGH}, ${LOW} }\n`)).toEqual(['eto-hargreaves Jul'])
    expect(named(`climate: { ${FULL} }\n`)).toEqual(['eto-penman-monteith Jul'])
    expect(named('climate: { eto-zone: 12 }\n')).toEqual(['eto-zone zone 12'])
    expect(named(`climate: { ${HAND}, rain: { Oct: 90 mm }, effective-rain: scs }\n`)).toEqual(['effective-rain Oct'])
  })

  it('show rain of single days by the heaviest of them and by its month, whether it counts or not', () => {
    const csv = record('rain (mm)', '2025-06-01', 30, index => (index === 3 ? '30' : '1'))
    const keys = (method: string) => `climate: { ${HAND}, daily-weather: days.csv, effective-rain: ${method} }\n`
    expect(named(keys('per-event'), csv)).toEqual([
      'month-from-days rain, Jun',
      'effective-rain 2025-06-04',
      'month-from-days rain that counts, Jun'
    ])
    expect(named(keys('none'), csv)).toEqual(['month-from-days rain, Jun'])
  })

  it('show a daily record by its day of most and by its month', () => {
    const csv = record('high (°C),low (°C)', '2025-07-01', 31, index => `${20 + index / 10},10`)
    expect(named('climate: { daily-weather: days.csv }\n', csv)).toEqual([
      'eto-hargreaves 2025-07-31',
      'month-from-days reference ET, Jul'
    ])
  })
})
