import { needsProtection } from '../../domain/burial/trench.ts'
import { atLeast } from '../../domain/within.ts'
import { EXCAVATION } from '../../reference/excavation.ts'
import { showStated } from '../../units/show.ts'
import type { Pit } from '../../model/site.ts'
import type { Severity } from '../../diagnostics/finding.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { PIT_DECIDES, depthFt, feetValue } from './pit-depth.ts'
import { usRule } from './us-rule.ts'

export const trenchProtection: SiteCheck = {
  card: {
    code: 'safety/trench-protection',
    severity: 'error',
    looksAt: 'A trench or pit without what keeps its sides from falling in.',
    why: 'Soil that falls in buries a person faster than anybody can dig, and the sides look sound until they go.',
    sources: ['osha-1926-652'],
    fix: 'Shore, shield or slope the sides, or below 5 ft have a competent person examine the ground.',
    worked: {
      example: `work-rules: { road: no, pits: [{ where: valve manifold, depth: 5 ft, examined: yes }] }`,
      instead: `work-rules: { road: no, pits: [{ where: valve manifold, depth: 4.5 ft, examined: yes }] }`
    }
  },
  run: ({ site }, report) => {
    for (const pit of site.workRules.pits ?? []) {
      const ground = pit.examined === true ? 'examined, no sign of a cave-in' : 'not examined'
      if (pit.protection !== undefined || !needsProtection(pit.depth.si, ground)) continue
      const deep = atLeast(depthFt(pit), EXCAVATION.protectiveFt)
      report({
        subject: pit.where,
        at: at(pit, 'depth'),
        severity: severityOf(pit),
        message: deep
          ? `${pit.where}: ${showStated(pit.depth)} deep; from 5 ft (1.52 m) down the sides need protection, and none is stated.`
          : `${pit.where}: ${showStated(pit.depth)} deep, and nobody is stated to have examined the ground.`,
        fix:
          (deep
            ? 'Shore, shield or slope the sides and write how: protection: trench box.'
            : 'Have a competent person examine the ground and write examined: yes, or protect the sides.') +
          usRule(site, PIT_DECIDES),
        values: { depth_ft: feetValue(pit), limit_ft: EXCAVATION.protectiveFt }
      })
    }
  }
}

/** The rule has no least depth. What lies above 4 ft, where the rules first ask for more, is worth a note. Rule of this project. */
function severityOf(pit: Pit): Severity {
  if (atLeast(depthFt(pit), EXCAVATION.protectiveFt)) return 'error'
  return atLeast(depthFt(pit), EXCAVATION.exitFt) ? 'warning' : 'note'
}
