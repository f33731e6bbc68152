import { atMost } from '../../domain/within.ts'
import { inUnit } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { usRule } from './us-rule.ts'

/** Uniform Plumbing Code 608.2 (2015): static pressure above this needs a regulator. The code prints 552 kPa beside it. */
const MOST_PSI = 80

export const storedPressure: SiteCheck = {
  card: {
    code: 'safety/stored-pressure',
    severity: 'note',
    looksAt: 'A supply whose static pressure is above 80 psi (5.5 bar).',
    why: 'A valve that is opened or taken apart by hand lets that pressure out at a face and a pair of hands.',
    sources: ['upc-608-2'],
    fix: 'Fit a pressure regulator, or have the shut-off closed and the pressure let out before a valve is opened by hand.',
    worked: {
      example: `supplies:
  - { id: S1, kind: potable, static-pressure: 95 psi }`,
      instead: `supplies:
  - { id: S1, kind: potable, static-pressure: 80 psi }`
    }
  },
  run: ({ site }, report) => {
    for (const supply of site.supplies) {
      const { staticPressure: pressure } = supply
      if (!pressure || atMost(inUnit(pressure, 'psi'), MOST_PSI)) continue
      report({
        subject: supply.id,
        at: at(supply, 'static-pressure'),
        message: `${supply.id} stands at ${showStated(pressure)}, above 80 psi (5.5 bar): a valve opened by hand lets it out at once.`,
        fix:
          'Close the shut-off and let the pressure out before you take a valve apart; ask for a regulator.' +
          usRule(site, 'The local plumbing code and the water supplier decide.'),
        values: { static_psi: inUnit(pressure, 'psi'), limit_psi: MOST_PSI }
      })
    }
  }
}
