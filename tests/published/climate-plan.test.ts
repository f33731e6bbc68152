import { describe, expect, it } from 'vitest'
import { dayFromWeatherM } from '../../src/plan/climate-days.ts'
import type { RecordPlace } from '../../src/plan/climate-days.ts'
import { loadWeather } from '../../src/load/weather-file.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { date } from '../../src/units/date.ts'
import { baseSite } from '../support/base-site.ts'
import { example, weatherDays } from './water/fixtures.ts'

/** Published figures all the way: from the text of a file to the plan. */
function planOf(keys: string): Plan {
  const { site, faults } = loadSite(baseSite(keys))
  if (!site) throw new Error(JSON.stringify(faults))
  return makePlan(site, date('2027-05-01'))
}

const DAYS = weatherDays()

// USDA Agricultural Research Service, Maricopa, Arizona: weather of 48 days with the FAO-56 output printed beside it.
describe(`a daily record of ${DAYS.length} days, read as a CSV file`, () => {
  const place: RecordPlace = { latitudeDeg: 33.069, elevationM: 361, windHeightM: 3 }
  const head = 'date,high (°C),low (°C),solar radiation (MJ/m²/d),wind (m/s),dew point (°C)'
  const rows = DAYS.map(one => [one.date, one.maxC, one.minC, one.solarMj, one.windMPerS, one.dewC].join(','))
  const { weather, faults } = loadWeather({ file: 'maricopa.csv', text: [head, ...rows].join('\n') })

  it('is read whole', () => {
    expect(faults).toEqual([])
    expect(weather?.days).toHaveLength(48)
  })

  // Inputs are printed to one or two digits; 18 years of such days came within 0.054 mm.
  it.each(DAYS.map(({ date: on, etoMm }, index) => ({ on, etoMm, index })))(
    '$on comes within 0.06 mm of $etoMm mm',
    ({ etoMm, index }) => {
      const day = weather?.days[index]
      const mm = day && dayFromWeatherM(day, place)
      expect(Math.abs((mm ?? Number.NaN) * 1000 - etoMm)).toBeLessThanOrEqual(0.06)
    }
  )
})

describe('temperatures as a row of normals', () => {
  // FAO paper 56 (1998), example 20: Lyon, 45.72° N, July, 26.6 and 14.8 °C: 5.0 mm a day, the last digit printed.
  it('give July at Lyon 5.0 mm a day', () => {
    const climate = 'mean-high: 6 8 12 16 20 24 26.6 26 22 16 10 7 °C, mean-low: 0 1 3 6 10 13 14.8 14 11 8 4 1 °C'
    const plan = planOf(`climate: { ${climate} }\nlocation: { latitude: 45.72 }\n`)
    const july = plan.climate.months[6]
    expect(Math.abs((july?.etM as number) * (1000 / 31) - 5.0)).toBeLessThanOrEqual(0.05)
    expect(july).toMatchObject({ way: 'temperatures', off: 0.2 })
  })
})

// Worked on paper for zone 12 of California's map (CIMIS, 1999): shrubs 0.5, no rain, 0.36 in/h, uniformity 80 %, Wednesdays of 2027.
describe('a year in zone 12, worked on paper', () => {
  const composed = example<object, { minPerMonth: readonly number[]; evtMin7dayAvg?: readonly number[] }>('C1')
  // By the rule of days × events a week / 7 the same note prints these per event.
  const perEvent = [26.5, 46.4, 72.9, 112.7, 145.8, 172.3, 172.3, 152.5, 119.3, 79.5, 39.8, 19.9]
  const plan = planOf(`units: us
season:
climate: { eto-zone: 12 }
controllers: [{ id: K1, box: VB1, programs: [{ id: A, days: Wed, starts: ["23:10"], stations: { 1: 60 min } }] }]
stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 3.7402597 gpm }, area: 1000 ft², uniformity: 80 %, plants: { factor: 0.5 } }
`)
  const water = plan.water.get('K1/1')

  it('asks for the minutes of each month', () => {
    for (const [index, minutes] of composed.expected.minPerMonth.entries()) {
      const month = water?.need.months[index]
      const applyM = (month?.needM as number) * 1.13636
      expect(Math.abs(applyM / (water?.rateMPerS as number) / 60 - minutes), `month ${index + 1}`).toBeLessThanOrEqual(
        0.1
      )
    }
  })

  it('and for the minutes of each watering, up to the whole minute', () => {
    const asked = water?.months.map(({ needS }) => (needS as number) / 60)
    expect(asked).toEqual(perEvent.map(minutes => Math.ceil(minutes)))
  })
})
