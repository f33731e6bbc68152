import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import type { Backflow } from '../../src/model/site.ts'
import { planBackflows } from '../../src/plan/backflows.ts'
import type { DuePlan } from '../../src/plan/plan.ts'
import { date, parseInterval } from '../../src/units/date.ts'
import { bareSite, bareSupply } from '../support/bare-site.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')

function planned(facts: Partial<Backflow>, on = ON): DuePlan | undefined {
  const supply = bareSupply({ backflow: { at: AT, kind: 'double check', ...facts } })
  return planBackflows(bareSite({ supplies: [supply] }), on).backflows.get('S1')
}

describe('when a backflow assembly is due for its test', () => {
  it('in the nursery: tested 2025-04-20, yearly, is 11 days overdue on 2026-05-01', () => {
    expect(planned({ tested: date('2025-04-20'), interval: parseInterval('1 year')! })).toEqual({
      dueOn: '2026-04-20',
      daysOverdue: 11
    })
  })

  it('is 12 months on where no interval is stated, and not overdue on the day itself', () => {
    expect(planned({ tested: date('2025-05-01') })).toEqual({ dueOn: '2026-05-01' })
    expect(planned({ tested: date('2025-05-01') }, date('2026-05-02'))).toEqual({ dueOn: '2026-05-01', daysOverdue: 1 })
  })

  it('follows the interval of the site, three years too', () => {
    expect(planned({ tested: date('2024-02-29'), interval: parseInterval('3 years')! })).toEqual({
      dueOn: '2027-02-28'
    })
  })

  it('counts from the latest test that was passed, on file or on a visit up to that day', () => {
    const visit = (on: string, passed: boolean) => ({
      at: AT,
      on: date(on),
      batteries: [],
      readings: [],
      found: [],
      done: [],
      open: [],
      tests: [{ at: AT, supply: 'S1', passed }]
    })
    const supply = bareSupply({ backflow: { at: AT, kind: 'double check', tested: date('2025-04-20') } })
    const visits = [visit('2026-04-02', true), visit('2026-04-03', false), visit('2026-05-02', true)]
    const due = planBackflows(bareSite({ supplies: [supply], visits }), ON).backflows.get('S1')
    expect(due).toEqual({ dueOn: '2027-04-02' })
  })

  it('says that no test is on file', () => {
    const plan = planned({})
    expect(plan && isAbsent(plan.dueOn) && plan.dueOn.reason).toBe('no test is on file')
  })

  it('takes “not fitted” with its reason, whatever date stands there', () => {
    const reason = (facts: Partial<Backflow>) => {
      const plan = planned(facts)
      return plan && isAbsent(plan.dueOn) ? plan.dueOn.reason : 'a date'
    }
    expect(reason({ kind: 'not fitted', reason: 'rain tank, no mains' })).toBe('not fitted: rain tank, no mains')
    expect(reason({ kind: 'Not fitted', tested: date('2025-01-01') })).toBe('not fitted, and no reason is given')
    expect(reason({ kind: 'none' })).toBe('not fitted, and no reason is given')
    expect(reason({ kind: 'nonreturn pair', tested: date('2025-09-01') })).toBe('a date')
  })

  it('is planned only for supplies that say something of one', () => {
    const site = bareSite({
      supplies: [bareSupply({ id: 'S1' }), bareSupply({ id: 'S2', backflow: { at: AT, kind: 'RP' } })]
    })
    expect([...planBackflows(site, ON).backflows.keys()]).toEqual(['S2'])
  })
})
