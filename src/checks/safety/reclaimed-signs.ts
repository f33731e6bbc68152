import { waterOf } from '../../domain/safety/water.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { usRule } from './us-rule.ts'

export const reclaimedSigns: SiteCheck = {
  card: {
    code: 'safety/reclaimed-signs',
    severity: 'warning',
    looksAt: 'A supply of reclaimed water without signs.',
    why: 'Reclaimed water looks like drinking water, and only a sign or a mark tells them apart.',
    sources: ['ma-314-cmr-20', 'austin-reclaimed-signs', 'ca-title-22'],
    fix: 'Put up the signs and marks that the reclaimed-water permit asks for, and state them.',
    worked: {
      example: `supplies:
  - { id: S1, kind: reclaimed }`,
      instead: `supplies:
  - { id: S1, kind: reclaimed, signs: "purple lids, a sign at each gate" }`
    }
  },
  run: ({ site }, report) => {
    for (const supply of site.supplies) {
      if (waterOf(supply.kind) !== 'reclaimed' || supply.signs !== undefined) continue
      report({
        subject: supply.id,
        at: at(supply, 'kind'),
        message: `${supply.id} is ${supply.kind} water, and no sign is stated that says so.`,
        fix:
          'Put up DO NOT DRINK signs and purple marks, then write them: signs: "purple lids, a sign at each gate".' +
          usRule(site, 'The reclaimed-water permit and the local health authority decide.')
      })
    }
  }
}
