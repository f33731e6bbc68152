import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { loadSite } from '../../src/load/site.ts'
import type { BudgetPlan } from '../../src/plan/budget-plan.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function budgetOf(keys: string, visits: readonly string[] = [], on = BASE_ON): BudgetPlan {
  const named = visits.map((text, index) => [`visit-${index + 1}.md`, `${text}\n`] as const)
  const { site, faults } = loadSite(baseSite(keys, { visits: named }))
  if (!site) throw new Error(JSON.stringify(faults))
  return makePlan(site, date(on)).budget
}

const sumOf = (budget: BudgetPlan, of: 'allowanceM3' | 'estimatedM3' | 'programmedM3'): number =>
  budget.months.reduce((sum, month) => {
    const amount = month[of]
    return sum + (isAbsent(amount) ? NaN : amount)
  }, 0)

const ORDINANCE = 'budget: { form: ordinance 2015, kind: residential }\n'

describe('the budget of a year', () => {
  it.each(['allowanceM3', 'estimatedM3', 'programmedM3'] as const)('%s: the months make the year', of => {
    for (const keys of [ORDINANCE, 'budget: { form: annual volume, annual: 100 m³ }\n']) {
      const budget = budgetOf(keys)
      expect(sumOf(budget, of)).toBeCloseTo(budget[of] as number, 9)
    }
  })

  it('by the ordinance: the completed worksheet of 2021, zone by zone, within the rounding of its factors', () => {
    const climate = `climate: { reference-et: { Jan: 3 in, Feb: 3 in, Mar: 3 in, Apr: 4 in, May: 4 in, Jun: 4 in, Jul: 4 in, Aug: 4 in, Sep: 4 in, Oct: 4 in, Nov: 3 in, Dec: 3 in } }\n`
    const zone = (number: number, kind: string, factor: number, area: number) =>
      `  - { id: K1/${number}, zone: Z${number}, devices: { kind: ${kind} }, plants: { factor: ${factor} }, area: ${area} ft² }\n`
    const stations = `stations:\n${zone(1, 'drip', 0.5, 204)}${zone(2, 'drip', 0.2, 1310)}${zone(3, 'spray', 0.8, 677)}${zone(4, 'drip', 0.2, 194)}`
    const budget = budgetOf(
      `units: us\nbudget: { form: ordinance 2015, kind: residential, special-area: 68 ft² }\n${climate}${stations}`
    )
    const gal = (m3: unknown) => (m3 as number) / (231 * 0.0254 ** 3)
    const uses = budget.zones.map(one => gal(one.useM3))
    for (const [index, published] of [3355.64, 8626.38, 19258.09, 1277.49].entries())
      expect(Math.abs((uses[index] ?? NaN) - published)).toBeLessThan(published * 0.0012)
    expect(Math.abs(gal(budget.estimatedM3) - 34330.48)).toBeLessThan(34330.48 * 0.0005)
    expect(gal(budget.allowanceM3)).toBeCloseTo(36784.1, 0)
  })

  it('takes the adjustment of the local rule before that of the kind, and none where nothing is said', () => {
    expect(budgetOf(ORDINANCE).adjustment).toBe(0.55)
    expect(budgetOf('budget: { form: ordinance 2015, kind: residential, adjustment: 0.42 }\n').adjustment).toBe(0.42)
    expect(budgetOf('budget: { form: ordinance 2015 }\n').allowanceM3).toMatchObject({ absent: true })
    expect(budgetOf('revision: "2"\n').allowanceM3).toMatchObject({ reason: 'no budget is stated' })
  })

  it('a station that counts in full raises allowance and estimate, and counts once', () => {
    const [plain, special] = ['', ', special-stations: [K1/2]'].map(more =>
      budgetOf(`budget: { form: ordinance 2015, kind: residential${more} }\n`)
    )
    expect(special?.specialAreaM2).toBe(150)
    expect(special?.areaM2).toBe(270)
    expect(special?.allowanceM3 as number).toBeGreaterThan(plain?.allowanceM3 as number)
  })

  it('is not made with a special area larger than the whole', () => {
    const budget = budgetOf('budget: { form: ordinance 2015, kind: residential, area: 100 m², special-area: 101 m² }\n')
    expect(budget.allowanceM3).toMatchObject({ reason: 'the special areas are larger than the whole' })
  })

  it('a hotter year never allows less nor is estimated at less', () => {
    const climate = (share: number) =>
      `climate: { reference-et: { ${['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'].map(month => `${month}: ${(50 * share).toFixed(3)} mm`).join(', ')} } }\n`
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3, noNaN: true }), times => {
        const [cool, hot] = [1, times].map(share => budgetOf(ORDINANCE + climate(share)))
        expect(hot?.allowanceM3 as number).toBeGreaterThanOrEqual((cool?.allowanceM3 as number) - 1e-9)
        expect(hot?.estimatedM3 as number).toBeGreaterThanOrEqual((cool?.estimatedM3 as number) - 1e-9)
      }),
      { numRuns: 20 }
    )
  })
})

describe('meter readings', () => {
  const reading = (on: string, meter: string) => `on: ${on}\nreadings: [{ supply: S1, meter: ${meter} }]`

  it('become stretches in order of date, whatever the order of the files and the units', () => {
    const { periods } = budgetOf('budget: { form: annual volume, annual: 100 m³ }\n', [
      reading('2026-04-20', '1294 kL'),
      reading('2026-04-06', '1284 m³'),
      reading('2026-04-27', '1296500 L')
    ])
    expect(periods.map(({ from, to, days }) => [from, to, days])).toEqual([
      ['2026-04-06', '2026-04-20', 14],
      ['2026-04-20', '2026-04-27', 7]
    ])
    expect(periods.map(one => one.meteredM3)).toEqual([expect.closeTo(10, 9), expect.closeTo(2.5, 9)])
  })

  it('count the nights between noon and noon: seven of the base site in a fortnight', () => {
    const [period] = budgetOf('revision: "2"\n', [reading('2026-04-06', '0 m³'), reading('2026-04-20', '5 m³')]).periods
    expect(period?.wateringDays).toBe(7)
    expect(period?.programmedM3).toBeCloseTo(7 * (25 * 0.012 + 16 * 0.028), 9)
  })

  it('two stretches are programmed and allowed as much as the whole', () => {
    const keys = 'budget: { form: annual volume, annual: 100 m³ }\n'
    const whole = budgetOf(keys, [reading('2026-04-10', '0 m³'), reading('2026-09-10', '50 m³')]).periods
    const parts = budgetOf(keys, [
      reading('2026-04-10', '0 m³'),
      reading('2026-06-15', '20 m³'),
      reading('2026-09-10', '50 m³')
    ]).periods
    const total = (of: 'programmedM3' | 'allowanceM3') => parts.reduce((sum, one) => sum + (one[of] as number), 0)
    expect(total('programmedM3')).toBeCloseTo(whole[0]?.programmedM3 ?? NaN, 9)
    expect(total('allowanceM3')).toBeCloseTo(whole[0]?.allowanceM3 as number, 9)
  })

  it('across a year’s end and before a program that counts days began: as if it had counted so before', () => {
    const season = 'season: { from: 10-01, to: 03-31 }\n'
    const [period] = budgetOf(season, [reading('2025-12-29', '0 m³'), reading('2026-01-04', '1 m³')]).periods
    expect(period?.wateringDays).toBe(3)
  })

  it('one reading alone, and two of one day, make no stretch', () => {
    expect(budgetOf('revision: "2"\n', [reading('2026-04-06', '3 m³')]).periods).toEqual([])
    expect(budgetOf('revision: "2"\n', [reading('2026-04-06', '3 m³'), reading('2026-04-06', '4 m³')]).periods).toEqual(
      []
    )
  })

  it('a slip is counted once: the stretch after it starts from what the meter showed', () => {
    const { periods } = budgetOf('revision: "2"\n', [
      reading('2026-04-06', '1284 m³'),
      reading('2026-04-20', '1289 ML'),
      reading('2026-05-04', '1294 m³')
    ])
    expect(periods[0]?.slip).toMatchObject({ unit: 'm³', meteredM3: 5 })
    expect(periods[1]?.slip).toBeUndefined()
    expect(periods[1]?.meteredM3).toBeCloseTo(5, 9)
  })
})
