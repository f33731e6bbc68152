import { isPresent } from '../../base/absent.ts'
import type { Supply } from '../../model/site.ts'
import { isNotFitted } from '../../plan/backflows.ts'
import type { DuePlan } from '../../plan/plan.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { isForHighHazard } from './backflow-kind.ts'

const DECIDES = 'The product label, the water supplier and a certified tester decide.'

export const chemicalInjection: SiteCheck = {
  card: {
    code: 'safety/chemical-injection',
    severity: 'error',
    looksAt: 'A supply that is dosed, for a backflow assembly that suits high hazard and whose test is in date.',
    why: 'Fertilizer and chemicals that run back into a drinking main poison whoever drinks from it.',
    sources: ['wac-16-201-220', 'upc-603-4-2', 'as-nzs-3500-1', 'common-practice'],
    fix: 'Fit an assembly for high hazard, such as a reduced-pressure assembly or an air gap, and keep its test in date.',
    worked: {
      on: '2026-05-01',
      example: `supplies:
  - { id: S1, kind: potable, injection: "liquid feed, at the pump", backflow: { kind: double check, tested: 2026-03-10 } }`,
      instead: `supplies:
  - { id: S1, kind: potable, injection: "liquid feed, at the pump", backflow: { kind: reduced pressure, tested: 2026-03-10 } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const supply of site.supplies) {
      if (supply.injection === undefined) continue
      judge(supply, plan.backflows.get(supply.id), report)
    }
  }
}

function judge(supply: Supply, due: DuePlan | undefined, report: Report): void {
  const { id, injection, backflow } = supply
  const dosed = `${id} is dosed (${injection})`
  const subject = id
  if (!backflow) {
    report({
      subject,
      at: at(supply, 'injection'),
      message: `${dosed}, and no backflow assembly is stated.`,
      fix: `Fit an assembly for high hazard and write it: backflow: { kind: reduced pressure, tested: … }. ${DECIDES}`
    })
    return
  }
  if (!isForHighHazard(backflow)) {
    report({
      subject,
      at: at(backflow, 'kind'),
      message: isNotFitted(backflow)
        ? `${dosed}, and no backflow assembly is fitted.`
        : `${dosed}; its backflow assembly is a ${backflow.kind}, which is not for high hazard.`,
      fix: `Stop dosing until an assembly for high hazard is fitted: a reduced-pressure assembly or an air gap. ${DECIDES}`,
      related: [{ at: at(supply, 'injection'), note: 'what is dosed' }]
    })
    return
  }
  const lapse = lapseOf(backflow.tested !== undefined, isNotFitted(backflow), due)
  if (lapse === undefined) return
  report({
    subject,
    at: at(backflow, 'tested'),
    severity: 'warning',
    message: `${dosed}, and ${lapse}.`,
    fix: `Stop dosing until a certified tester has passed the ${backflow.kind} assembly. ${DECIDES}`,
    values: { ...(due?.daysOverdue === undefined ? {} : { days_overdue: due.daysOverdue }) },
    related: [{ at: at(supply, 'injection'), note: 'what is dosed' }]
  })
}

/** Why the assembly cannot be trusted today. An air gap in place of an assembly has nothing to test. */
function lapseOf(tested: boolean, airGap: boolean, due: DuePlan | undefined): string | undefined {
  if (airGap) return undefined
  if (!tested) return 'no test of its backflow assembly is on file'
  if (!due || !isPresent(due.dueOn) || (due.daysOverdue ?? 0) <= 0) return undefined
  return `the test of its backflow assembly was due ${due.dueOn}`
}
