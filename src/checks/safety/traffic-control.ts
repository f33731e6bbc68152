import { isRoadside } from '../../domain/safety/roadside.ts'
import { showWindow } from '../../units/clock.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const trafficControl: SiteCheck = {
  card: {
    code: 'safety/traffic-control',
    severity: 'warning',
    looksAt: 'A place at a road without a traffic-control plan or a permit number.',
    why: 'Work in the right-of-way needs a set-up that trained people put out to a plan; a visit that finds none is sent home or improvises.',
    sources: ['mutcd-part-6', 'gb-street-works', 'as-1742-3'],
    fix: 'Ask the road authority for the permit, have the plan made, and write its number.',
    worked: {
      example: `place: roundabout
work-rules: { road: yes, lane-closure: 22:00-05:00 }`,
      instead: `place: roundabout
work-rules: { road: yes, lane-closure: 22:00-05:00, traffic-control-plan: TC-14 }`
    }
  },
  run: ({ site }, report) => {
    const { workRules: rules, place, units } = site
    if (!isRoadside({ place, road: rules.road }) || rules.trafficControlPlan !== undefined) return
    const where = rules.road === true ? 'The work is at a road' : `The place is a ${place}`
    const closure = rules.laneClosure ? ` (lane closure ${showWindow(rules.laneClosure, units)})` : ''
    report({
      subject: '',
      at: rules.road === true ? at(rules, 'road') : at(site, 'place'),
      message: `${where}${closure}, and no traffic-control plan or permit number is stated.`,
      fix: 'Get the plan or the permit and write its number: work-rules: { traffic-control-plan: TC-14 }. The road authority decides.'
    })
  }
}
