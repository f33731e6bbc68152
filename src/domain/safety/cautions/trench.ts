import { absent } from '../../../base/absent.ts'
import { EXCAVATION } from '../../../reference/excavation.ts'
import { fromSi, quantity } from '../../../units/quantity.ts'
import { roundedText } from '../../../units/show.ts'
import { caution } from '../card.ts'

/** 29 CFR 1926.651(c)(2): the shallowest depth that a rule speaks of. */
const SHALLOWEST_M = quantity(EXCAVATION.exitFt, 'ft', 'length').si

export const trench = caution({
  id: 'trench',
  signal: 'WARNING',
  graded: 'A wall that falls in can bury a person, and seldom does in shallow, firm ground.',
  scope: 'step',
  rank: 2,
  atBox: false,
  applies: ({ place, deepestPitM }) => {
    if (place === 'roof') return absent('nobody digs on a roof')
    if (deepestPitM === undefined) return 'The depth of trenches and pits is not stated.'
    if (deepestPitM < SHALLOWEST_M) return absent('no trench or pit is 4 ft deep')
    return `A trench or pit here is ${roundedText(fromSi(deepestPitM, 'ft', 'length'), 1)} ft (${roundedText(deepestPitM, 2)} m) deep.`
  },
  editions: {
    US: ['osha-1926-651', 'osha-1926-652'],
    GB: ['gb-cdm'],
    EU: ['eu-92-57'],
    AU: ['au-excavation-cop'],
    NZ: ['nz-excavation']
  },
  worked: { example: { deepestPitM: 1.5 }, instead: { deepestPitM: 0.6 } }
})
