import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const lightning = caution({
  id: 'lightning',
  signal: 'WARNING',
  graded: 'A strike can kill, and most storms miss.',
  scope: 'site',
  rank: 6,
  atBox: false,
  applies: ({ place }) =>
    place === 'glasshouse' ? absent('the work is under a roof') : 'The work is outdoors, at the end of long wires.',
  editions: { everywhere: ['tdi-lightning'] },
  worked: { example: { place: 'park' }, instead: { place: 'glasshouse' } }
})
