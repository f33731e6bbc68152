import { isPresent } from '../../base/absent.ts'
import { isNotFitted } from '../../plan/backflows.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

const DECIDES = 'The water supplier and a certified tester decide.'

export const backflowOverdue: SiteCheck = {
  card: {
    code: 'safety/backflow-overdue',
    severity: 'error',
    looksAt: 'The last test of a backflow assembly, against its interval.',
    why: 'A worn assembly lets irrigation water back into the drinking main, and nothing shows it but a test.',
    sources: ['upc-603-4-2', 'site-record'],
    fix: 'Have a certified tester test the assembly and write the day down.',
    worked: {
      on: '2026-05-01',
      example: `supplies:
  - { id: S1, kind: potable, backflow: { kind: double check, tested: 2025-04-20, interval: 12 months } }`,
      instead: `supplies:
  - { id: S1, kind: potable, backflow: { kind: double check, tested: 2025-05-01, interval: 12 months } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const supply of site.supplies) {
      const { backflow } = supply
      if (!backflow || isNotFitted(backflow)) continue
      if (backflow.tested === undefined) {
        report({
          subject: supply.id,
          at: at(supply, 'backflow'),
          message: `${supply.id}: no test is on file for the backflow assembly (${backflow.kind}).`,
          fix: `Have a certified tester test it, then write the day: tested: ${plan.on}. ${DECIDES}`
        })
        continue
      }
      const due = plan.backflows.get(supply.id)
      const days = due?.daysOverdue ?? 0
      if (!due || !isPresent(due.dueOn) || days <= 0) continue
      report({
        subject: supply.id,
        at: at(supply, 'backflow', 'tested'),
        message: `${supply.id}: the backflow test was due ${due.dueOn}, ${days} ${days === 1 ? 'day' : 'days'} ago; the last one was ${backflow.tested}.`,
        fix: `Have a certified tester test it and write the new day. ${DECIDES}`,
        values: { days_overdue: days, due_on: due.dueOn, tested_on: backflow.tested }
      })
    }
  }
}
