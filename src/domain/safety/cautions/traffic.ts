import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'
import type { SafetyFacts } from '../facts.ts'
import { isRoadside, roadNotStated } from '../roadside.ts'

export const traffic = caution({
  id: 'traffic',
  signal: 'DANGER',
  graded: 'A person on foot who is hit at road speed dies or is maimed.',
  scope: 'site',
  rank: 1,
  atBox: true,
  applies: facts => {
    if (isRoadside(facts)) return `${whereOf(facts)}, ${controlOf(facts)}.`
    if (roadNotStated(facts)) return 'The site file does not say whether a road is near.'
    return absent('no road is near')
  },
  editions: {
    US: ['mutcd-part-6', 'cfr-23-634', 'ansi-107'],
    GB: ['gb-street-works', 'en-iso-20471'],
    AU: ['as-1742-3'],
    NZ: ['nz-gttm']
  },
  worked: { example: { place: 'roundabout' }, instead: { place: 'park', road: false } }
})

function whereOf({ road, place, laneClosure }: SafetyFacts): string {
  const where = road === true ? 'The work is at a road' : `The place is a ${place}, inside the road`
  return laneClosure === undefined ? where : `${where} with closure hours ${laneClosure}`
}

function controlOf({ trafficControlPlan: plan }: SafetyFacts): string {
  return plan === undefined ? 'and no traffic-control plan is stated' : `under plan or permit ${plan}`
}
