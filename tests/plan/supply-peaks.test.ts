import { expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planned(keys: string) {
  const { site } = loadSite(baseSite(keys))
  if (!site) throw new Error('the site is not understood')
  return makePlan(site, date(BASE_ON))
}

it('the most that a supply gives is planned with its time, its stations and its arithmetic', () => {
  const plan = planned('revision: "2"\n')
  expect(plan.peaks.get('S1')).toMatchObject({ on: '2026-04-02', stations: ['K1/2'], daysOver: 0, flowNotStated: [] })
  expect((plan.peaks.get('S1')?.flowM3s ?? 0) * 60_000).toBeCloseTo(28, 6)
  const working = plan.workings.find(one => one.calculation === 'supply-peak')
  expect(working).toMatchObject({ subject: 'S1', steps: ['K1/2 28\u00a0L/min, 23:35 to 23:43'] })
})

it('a supply without a limit has a peak and no day over it', () => {
  expect(planned('supplies: [{ id: S1, kind: pond }]\n').peaks.get('S1')).toMatchObject({ daysOver: 0 })
})

it('a supply from which nothing is drawn has no peak', () => {
  expect(planned('controllers: [{ id: K1, box: VB1, supply: S1 }]\n').peaks.size).toBe(0)
  expect(planned('status: out-of-service\n').peaks.size).toBe(0)
})
