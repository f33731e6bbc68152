import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Absent } from '../../src/base/absent.ts'
import { isPresent } from '../../src/base/absent.ts'
import { sum } from '../../src/base/collections.ts'
import { isInSeason } from '../../src/domain/schedule/active.ts'
import { daysOfYear } from '../../src/domain/schedule/calendar-days.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { WaterPlan } from '../../src/plan/plan.ts'
import { MONTHS, addDays, date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planOf(keys: string, on = BASE_ON) {
  const { site, faults } = loadSite(baseSite(keys))
  if (!site) throw new Error(JSON.stringify(faults))
  return makePlan(site, date(on))
}

function water(keys: string, on?: string): WaterPlan {
  const plan = planOf(keys, on).water.get('K1/1')
  if (!plan) throw new Error('nothing is planned for K1/1')
  return plan
}

const mm = (value: unknown): number => (value as number) * 1000
const DRIP = 'devices: { kind: drip, flow: 12 L/min }, area: 120 m², soil: { available-water: 40 mm }'
const station = (facts: string) => `stations:\n  - { id: K1/1, zone: Z1, ${DRIP}, ${facts} }\n`
const EVEN = 'climate: { reference-et: 62 62 62 62 62 62 62 62 62 62 62 62 mm }\n'
const ALL_YEAR = `season:\ncontrollers: [{ id: K1, box: VB1, supply: S1, programs: [{ id: A, days: every day, starts: ["23:10"], stations: { 1: 25 min } }] }]\n`

describe('the factor', () => {
  it('is one plant factor, or species times density times microclimate, of which two may be left out', () => {
    expect(water(station('plants: { factor: 0.5 }')).need.factor).toEqual({ value: 0.5 })
    const { factor } = water(station('plants: { species-factor: 0.5, density: 1.1, microclimate: 1.2 }')).need
    expect(factor).toMatchObject({ parts: { species: 0.5, density: 1.1, microclimate: 1.2 } })
    expect((factor as { value: number }).value).toBeCloseTo(0.66, 12)
    expect(water(station('plants: { species-factor: 0.5 }')).need.factor).toMatchObject({ value: 0.5 })
  })

  it('is absent where two contradict each other, and then so is the need, with that reason', () => {
    const { need, months } = water(station('plants: { factor: 0.5, species-factor: 0.4 }'))
    expect((need.factor as Absent).reason).toContain('of which one is due')
    expect((months[6]?.needS as Absent).reason).toBe((need.factor as Absent).reason)
  })
})

describe('phases', () => {
  const phased = (phases: string, on?: string) =>
    water(`${ALL_YEAR}${EVEN}${station(`plants: { factor: 0.5 }, phases: [${phases}]`)}`, on).need

  it('change the need on their day: a month of two is the sum of its days', () => {
    const { months } = phased(
      '{ name: establishment, to: 2026-07-10, percent: 200 % }, { name: established, from: 2026-07-11 }'
    )
    expect(months[6]?.parts).toEqual([
      { name: 'establishment', factor: 1, days: 10 },
      { name: 'established', factor: 0.5, days: 21 }
    ])
    expect(mm(months[6]?.needM)).toBeCloseTo((62 * (10 + 0.5 * 21)) / 31, 9)
    expect(mm(months[5]?.needM)).toBeCloseTo(62, 9)
    expect(mm(months[7]?.needM)).toBeCloseTo(31, 9)
  })

  it('that ended in another year change nothing', () => {
    const ended = '{ name: establishment, from: 2024-03-01, to: 2025-12-31, percent: 200 % }'
    expect(phased(ended).months.map(one => mm(one.needM))).toEqual(phased('').months.map(one => mm(one.needM)))
    expect(mm(phased(ended, '2025-05-01').months[0]?.needM)).toBeCloseTo(62, 9)
  })

  it('with a factor of their own do without that of the plants', () => {
    const { need } = water(`${ALL_YEAR}${EVEN}${station('phases: [{ name: establishment, factor: 0.8 }]')}`)
    expect(mm(need.months[0]?.needM)).toBeCloseTo(49.6, 9)
    expect(
      (
        water(`${ALL_YEAR}${EVEN}${station('phases: [{ name: establishment, factor: 0.8, to: 2026-06-30 }]')}`).need
          .months[7]?.needM as Absent
      ).reason
    ).toBe('no plant factor is stated')
  })

  it('a planting that is watered for a time only needs nothing before and after', () => {
    const { months } = phased('{ name: temporary, from: 2026-03-01, to: 2026-05-15 }')
    expect(months.map(one => Math.round(mm(one.needM)))).toEqual([0, 0, 31, 31, 15, 0, 0, 0, 0, 0, 0, 0])
    expect(months[4]?.parts).toEqual([
      { name: 'temporary', factor: 0.5, days: 15 },
      { name: 'none', factor: 0, days: 16 }
    ])
  })

  it('that overlap: the one that began last holds the day', () => {
    const { months } = phased(
      '{ name: established, from: 2026-01-01 }, { name: temporary, from: 2026-02-01, to: 2026-02-28, factor: 1 }'
    )
    expect(months.map(one => one.parts.map(part => part.name).join())).toEqual(
      MONTHS.map((_, index) => (index === 1 ? 'temporary' : 'established'))
    )
  })

  it('of the site hold where a station names none', () => {
    const keys = `${ALL_YEAR}${EVEN}phases: [{ name: establishment, percent: 200 % }]\n`
    expect(mm(water(`${keys}${station('plants: { factor: 0.5 }')}`).need.months[0]?.needM)).toBeCloseTo(62, 9)
    const own = station('plants: { factor: 0.5 }, phases: [{ name: established }]')
    expect(mm(water(keys + own).need.months[0]?.needM)).toBeCloseTo(31, 9)
  })

  it('partition the watered days of any year: each day stands in one phase and none twice', () => {
    const day = fc.integer({ min: 0, max: 729 }).map(shift => addDays(date('2026-01-01'), shift))
    const phase = fc.record({
      name: fc.constantFrom('establishment', 'established', 'temporary'),
      from: fc.option(day, { nil: undefined }),
      to: fc.option(day, { nil: undefined }),
      factor: fc.constantFrom(0.3, 0.5, 0.9)
    })
    const season = { from: '04-01', to: '10-15' }
    fc.assert(
      fc.property(fc.array(phase, { maxLength: 4 }), fc.constantFrom('2026-05-01', '2028-05-01'), (phases, on) => {
        const text = phases
          .map(({ name, from, to, factor }) => {
            const days = `${from ? `, from: ${from}` : ''}${to ? `, to: ${to}` : ''}`
            return `{ name: ${name}, factor: ${factor}${days} }`
          })
          .join(', ')
        const keys = ALL_YEAR.replace('season:', 'season: { from: 04-01, to: 10-15 }')
        const { need } = water(`${keys}${EVEN}${station(`plants: { factor: 0.5 }, phases: [${text}]`)}`, on)
        const year = Number(on.slice(0, 4))
        const inSeason = daysOfYear(year).filter(one => isInSeason(one, season as never))
        for (const [index, month] of need.months.entries()) {
          const due = inSeason.filter(one => one.month === index + 1).length
          expect(sum(month.parts.map(part => part.days))).toBe(due)
          const keysOf = month.parts.map(part => `${part.name} ${part.factor}`)
          expect(new Set(keysOf).size).toBe(keysOf.length)
        }
      }),
      { numRuns: 60 }
    )
  })
})

describe('losses', () => {
  it('a uniformity goes through its multiplier, an efficiency divides, nothing stated takes nothing', () => {
    const multiplier = (facts: string) => water(station(`plants: { factor: 0.5 }${facts}`)).need.delivery
    expect(multiplier(', uniformity: 80 %')).toMatchObject({ by: 'dulq' })
    expect((multiplier(', uniformity: 80 %') as { multiplier: number }).multiplier).toBeCloseTo(1.13636, 5)
    expect((multiplier(', efficiency: 80 %') as { multiplier: number }).multiplier).toBeCloseTo(1.25, 12)
    expect(multiplier('')).toMatchObject({ by: 'nothing', multiplier: 1 })
    expect(multiplier(', uniformity: 80 %, efficiency: 80 %')).toMatchObject({ absent: true })
  })

  it('cans go before what is stated, and their rate before flow over area', () => {
    // Worked on paper: mean 10 mm, the lowest of four 8 mm: 80 %; 10 mm in 30 min is 20 mm/h, where flow over area would say 6.
    const cans = 'catch-cans: { catches: 8 10 12 10 mm, time: 30 min }'
    const plan = water(station(`plants: { factor: 0.5 }, uniformity: 50 %, ${cans}`))
    expect(plan.need.delivery).toMatchObject({ by: 'catch-cans', delivery: { by: 'dulq' } })
    expect(mm(plan.rateMPerS) * 3600).toBeCloseTo(20, 9)
    expect(plan.rateBy).toBe('catch-cans')
    const untimed = water(station('plants: { factor: 0.5 }, catch-cans: { catches: 8 10 12 10 mm }'))
    expect(mm(untimed.rateMPerS) * 3600).toBeCloseTo(6, 9)
    expect(untimed.need.delivery).toMatchObject({ by: 'catch-cans' })
  })

  it('volumes tell a rate where the opening of a can is known, and only then', () => {
    // 100 mL on 100 cm² is 10 mm.
    const cans = (throat: string) =>
      water(station(`plants: { factor: 0.5 }, catch-cans: { catches: 80 100 120 100 mL, time: 30 min${throat} }`))
    expect(mm(cans(', throat: 100 cm²').rateMPerS) * 3600).toBeCloseTo(20, 9)
    expect(cans('').rateBy).toBe('flow')
  })
})

describe('the longest interval', () => {
  it('is the whole days that what may be used lasts at the use of a day', () => {
    // 40 mm, half of it; 62 mm × 0.5 / 31 is 1 mm a day.
    const { months } = water(`${ALL_YEAR}${EVEN}${station('plants: { factor: 0.5 }')}`).need
    expect(months[6]?.intervalDays).toBe(20)
    expect(months[1]?.intervalDays).toBe(18)
  })

  it('is 0 where it does not last a day, and absent where nothing is used or known', () => {
    const at = (facts: string) =>
      water(
        `${ALL_YEAR}${EVEN}stations:\n  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 12 L/min }, area: 120 m², ${facts} }\n`
      )
    expect(at('plants: { factor: 1 }, soil: { available-water: 3 mm }').need.months[6]?.intervalDays).toBe(0)
    expect(at('plants: { factor: 0 }, soil: { available-water: 3 mm }').need.months[6]?.intervalDays).toMatchObject({
      absent: true
    })
    expect(at('plants: { factor: 1 }').need.months[6]?.intervalDays).toMatchObject({ absent: true })
  })
})

describe('the monthly percent', () => {
  it('is the need of a day against that of the month that needs most', () => {
    const { months } = water(
      `${ALL_YEAR}climate: { reference-et: 31 28 62 60 93 120 124 93 60 31 30 31 mm }\n${station('plants: { factor: 0.5 }')}`
    ).need
    const percents = months.map(one => Math.round((one.percent as number) * 100))
    expect(percents).toEqual([25, 25, 50, 50, 75, 100, 100, 75, 50, 25, 25, 25])
  })

  it('of a month that is watered in part is that of its days, and of one that is not, absent', () => {
    const part = water(`season: { from: 07-16, to: 08-31 }\n${EVEN}`).need
    expect(part.months.map(one => (isPresent(one.percent) ? one.percent : '–'))).toEqual([
      ...Array<string>(6).fill('–'),
      1,
      1,
      ...Array<string>(4).fill('–')
    ])
  })
})

const amount = fc.integer({ min: 0, max: 200 })
const twelve = fc.array(amount, { minLength: 12, maxLength: 12 })

describe('over any year', () => {
  it('the need of the year is the sum of its months', () => {
    fc.assert(
      fc.property(twelve, twelve, fc.constantFrom('none', 'scs', '25 %'), (et, rain, method) => {
        const climate = `climate: { reference-et: ${et.join(' ')} mm, rain: ${rain.join(' ')} mm, effective-rain: ${method} }\n`
        const { need, months } = water(`${climate}${station('plants: { factor: 0.5 }')}`)
        const known = months.map(one => one.needM).filter(isPresent)
        expect(need.yearM).toBeCloseTo(sum(known), 12)
      }),
      { numRuns: 40 }
    )
  })

  it('a hotter July never asks for less water: by its reference ET, and by its temperatures', () => {
    const july = (climate: string) => water(`climate: { ${climate} }\n`).months[6]?.needS as number
    fc.assert(
      fc.property(amount, fc.integer({ min: 0, max: 50 }), (et, more) => {
        const at = (value: number) => july(`reference-et: { Jul: ${value} mm }`)
        expect(at(et + more)).toBeGreaterThanOrEqual(at(et))
      }),
      { numRuns: 30 }
    )
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 300 }), fc.integer({ min: 0, max: 100 }), (low, more) => {
        const at = (shift: number) =>
          july(`mean-high: { Jul: ${(low + 110 + shift) / 10} °C }, mean-low: { Jul: ${(low + shift) / 10} °C }`)
        expect(at(more)).toBeGreaterThanOrEqual(at(0))
      }),
      { numRuns: 30 }
    )
  })

  it('rain never makes a need greater, and under glass changes nothing', () => {
    fc.assert(
      fc.property(
        amount,
        fc.integer({ min: 0, max: 300 }),
        fc.constantFrom('scs', 'fao-manual-3', 'tr-21'),
        (et, rain, method) => {
          const need = (place: string, fallen: number) =>
            mm(
              water(
                `${place}climate: { reference-et: { Jul: ${et} mm }, rain: { Jul: ${fallen} mm }, effective-rain: ${method} }\n`
              ).months[6]?.needM
            )
          expect(need('', rain)).toBeLessThanOrEqual(need('', 0) + 1e-9)
          expect(need('place: glasshouse\n', rain)).toBe(need('place: glasshouse\n', 0))
          expect(need('place: glasshouse\n', rain)).toBeCloseTo(et * 0.5, 9)
        }
      ),
      { numRuns: 40 }
    )
  })
})

describe('the workings of the need', () => {
  it('cover coefficient, cans, phases, percents and interval, and agree with the plan', () => {
    const facts =
      'plants: { species-factor: 0.5, microclimate: 1.2 }, catch-cans: { catches: 8 10 12 10 mm, time: 30 min }, phases: [{ name: establishment, to: 2026-07-10, percent: 120 % }]'
    const plan = planOf(`${ALL_YEAR}${EVEN}${station(facts)}`)
    const own = plan.workings.filter(one => one.subject.startsWith('K1/1'))
    const names = own.map(one => one.calculation)
    for (const name of [
      'landscape-coefficient',
      'uniformity',
      'phase-need',
      'monthly-percent',
      'soil-reservoir',
      'run-time'
    ])
      expect(names, name).toContain(name)
    expect(names).not.toContain('application-rate')
    const interval = own.find(one => one.calculation === 'soil-reservoir')?.steps.join(' ')
    const days = Math.min(...(plan.water.get('K1/1')?.need.months.map(one => one.intervalDays as number) ?? []))
    expect(interval).toContain(`= ${days} whole days`)
  })
})
