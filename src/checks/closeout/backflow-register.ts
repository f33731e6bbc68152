import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import { isNotFitted } from '../../plan/backflows.ts'

export const backflowRegister: SiteCheck = {
  card: {
    code: 'closeout/backflow-register',
    severity: 'error',
    looksAt: 'The register of the backflow assembly: serial number, tester and license, at handover.',
    why: 'The water supplier files a test by serial number and license; without them it counts as not done.',
    sources: ['project-rule'],
    fix: 'Write the serial number, the tester and the license of the tester.',
    worked: {
      example: `supplies: [{ id: S1, kind: potable, backflow: { kind: double check, tested: 2026-03-10 } }]
closeout: { acceptance: 2025-04-30 }`,
      instead: `supplies: [{ id: S1, kind: potable, backflow: { kind: double check, serial: BF-1, tested: 2026-03-10, tester: A. Tester, tester-licence: BT-1 } }]
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    if (!closedOut(site)) return
    for (const supply of site.supplies) {
      const { backflow } = supply
      if (!backflow || isNotFitted(backflow)) continue
      const lacking = [
        ...(backflow.serial === undefined ? ['the serial number'] : []),
        ...(backflow.tester === undefined ? ['the tester'] : []),
        ...(backflow.testerLicence === undefined ? ['the license of the tester'] : [])
      ]
      if (lacking.length > 0)
        report({
          subject: supply.id,
          at: at(supply, 'backflow'),
          message: `${supply.id}: the register of the backflow assembly lacks ${joined(lacking)}.`,
          fix: `Write ${joined(lacking)} under backflow.`
        })
    }
  }
}
