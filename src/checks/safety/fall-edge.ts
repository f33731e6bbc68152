import { atLeast } from '../../domain/within.ts'
import type { Site } from '../../model/site.ts'
import { GUARD_LEAST_M, ROOF_EDGE } from '../../reference/guard-height.ts'
import { fromSi } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { usRule } from './us-rule.ts'

const DECIDES = 'Local fall-protection rules and the building owner decide.'

export const fallEdge: SiteCheck = {
  card: {
    code: 'safety/fall-edge',
    severity: 'warning',
    looksAt: 'A roof, for what keeps a person from falling off it.',
    why: 'A parapet lower than a guardrail stops nobody, and whoever comes to change a battery brings no fall arrest unless told.',
    sources: ['osha-1910-28', 'osha-1910-29'],
    fix: 'State the edge protection or the anchors, and have the roof permit say how the edge is approached.',
    worked: {
      example: `place: roof
work-rules: { road: no, parapet: 0.6 m }`,
      instead: `place: roof
work-rules: { road: no, edge-protection: "guardrail all round, 1.1 m" }`
    }
  },
  run: ({ site }, report) => {
    const { workRules: rules } = site
    if (site.place !== 'roof' && rules.roofEdge === undefined) return
    if (isGuarded(site)) return
    const anchors = rules.anchors ?? []
    const tied = anchors.length > 0
    report({
      subject: '',
      at: rules.parapet ? at(rules, 'parapet') : at(site, 'place'),
      severity: tied ? 'note' : 'warning',
      message: `${edgeText(site)}${tied ? `; anchors ${anchors.join(', ')} are there to tie off to.` : ', and no anchor is stated.'}`,
      fix:
        (tied
          ? 'Tie off within 6 ft (1.8 m) of the edge, and check that the test of the anchors is in date.'
          : 'State the guardrail or the anchors: work-rules: { anchors: [A1, A2] }.') + usRule(site, DECIDES),
      values: {
        ...(rules.parapet ? { parapet_m: rules.parapet.si, guard_least_m: GUARD_LEAST_M } : {}),
        ...(rules.roofEdge ? { roof_edge_m: rules.roofEdge.si } : {})
      }
    })
  }
}

/** A guard that is stated or high enough, or work so far in that the edge needs none (29 CFR 1910.28(b)(13)(iii)). */
function isGuarded({ workRules: { edgeProtection, parapet, roofEdge } }: Site): boolean {
  if (edgeProtection !== undefined) return true
  if (parapet && atLeast(parapet.si, GUARD_LEAST_M)) return true
  return roofEdge !== undefined && atLeast(fromSi(roofEdge.si, 'ft', 'length'), ROOF_EDGE.designatedFt)
}

function edgeText({ workRules: { parapet, roofEdge } }: Site): string {
  if (parapet) return `The parapet is ${showStated(parapet)} high, lower than a guardrail of 39 in (0.99 m)`
  if (roofEdge) return `The work is ${showStated(roofEdge)} from the edge, which nothing guards`
  return 'The place is a roof and nothing is stated of its edge'
}
