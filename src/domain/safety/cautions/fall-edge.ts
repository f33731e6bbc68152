import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const fallEdge = caution({
  id: 'fall-edge',
  signal: 'DANGER',
  graded: 'A fall of one story kills or cripples.',
  scope: 'site',
  rank: 4,
  atBox: true,
  applies: ({ place, roofEdgeM, parapetM }) => {
    if (place === 'roof')
      return roofEdgeM === undefined && parapetM === undefined
        ? 'The place is a roof, and nothing is stated of its edge.'
        : 'The place is a roof.'
    return roofEdgeM === undefined ? absent('no roof edge') : 'The work is near a roof edge.'
  },
  editions: {
    US: ['osha-1910-28', 'osha-1926-501'],
    GB: ['gb-work-at-height'],
    EU: ['eu-2009-104'],
    AU: ['au-falls-cop'],
    NZ: ['nz-heights']
  },
  worked: { example: { place: 'roof' }, instead: { place: 'park' } }
})
