import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const buriedUtilities = caution({
  id: 'buried-utilities',
  signal: 'WARNING',
  graded: 'A spade in a power or gas line can kill, but most digging meets none.',
  scope: 'step',
  rank: 1,
  atBox: false,
  applies: ({ place }) =>
    place === 'roof' ? absent('nobody digs on a roof') : 'A repair of wire or pipe here means digging.',
  editions: {
    US: ['us-811', 'osha-1926-651-b'],
    GB: ['hse-hsg47'],
    AU: ['au-excavation-cop'],
    NZ: ['nz-excavation']
  },
  worked: { example: { place: 'park' }, instead: { place: 'roof' } }
})
