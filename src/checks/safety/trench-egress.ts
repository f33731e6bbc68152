import { exits, needsExit } from '../../domain/burial/trench.ts'
import { EXCAVATION } from '../../reference/excavation.ts'
import { showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { PIT_DECIDES, feetValue } from './pit-depth.ts'
import { usRule } from './us-rule.ts'

export const trenchEgress: SiteCheck = {
  card: {
    code: 'safety/trench-egress',
    severity: 'error',
    looksAt: 'A trench or pit of 4 ft or more, for enough ladders, steps or ramps.',
    why: 'Whoever is in the hole when it starts to go has seconds, and a ladder out of reach is none.',
    sources: ['osha-1926-651'],
    fix: 'Set a ladder or ramp so that nobody has more than 25 ft (7.6 m) to go to it.',
    worked: {
      example: `work-rules: { road: no, pits: [{ where: main trench, depth: 4 ft, length: 60 ft, examined: yes, exits: 1 }] }`,
      instead: `work-rules: { road: no, pits: [{ where: main trench, depth: 4 ft, length: 60 ft, examined: yes, exits: 2 }] }`
    }
  },
  run: ({ site }, report) => {
    for (const pit of site.workRules.pits ?? []) {
      if (!needsExit(pit.depth.si)) continue
      const needed = exits(pit.depth.si, pit.length?.si ?? 0)
      const there = pit.exits ?? 0
      if (there >= needed) continue
      const long = pit.length ? ` and ${showStated(pit.length)} long` : ''
      report({
        subject: pit.where,
        at: pit.exits === undefined ? at(pit, 'depth') : at(pit, 'exits'),
        message: `${pit.where}: ${showStated(pit.depth)} deep${long} takes ${needed} ${needed === 1 ? 'way' : 'ways'} out; ${there === 0 ? 'none is' : `${there} ${there === 1 ? 'is' : 'are'}`} stated.`,
        fix: `Set ${needed === 1 ? 'a ladder, steps or a ramp' : `${needed} ladders, steps or ramps`}, no more than 25 ft (7.6 m) from anybody, and write exits: ${needed}.${usRule(site, PIT_DECIDES)}`,
        values: {
          depth_ft: feetValue(pit),
          limit_ft: EXCAVATION.exitFt,
          exits_needed: needed,
          exits_stated: there
        }
      })
    }
  }
}
