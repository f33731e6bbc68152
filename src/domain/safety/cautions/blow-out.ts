import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const blowOut = caution({
  id: 'blow-out',
  signal: 'WARNING',
  graded: 'A part thrown by air can kill or blind; a regulated line seldom throws one.',
  scope: 'step',
  rank: 3,
  atBox: false,
  applies: ({ winterizedByAir }) =>
    winterizedByAir ? 'The site file says that the lines are blown out with air.' : absent('air is not used here'),
  editions: { everywhere: ['common-practice'] },
  worked: { example: { winterizedByAir: true }, instead: { winterizedByAir: false } }
})
