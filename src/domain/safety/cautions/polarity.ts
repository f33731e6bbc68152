import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const polarity = caution({
  id: 'polarity',
  signal: 'NOTICE',
  graded: 'A valve that works backward wastes water.',
  scope: 'step',
  rank: 3,
  atBox: true,
  applies: ({ coils }) => {
    if (coils.includes('DC latching 2-wire')) return 'Two-wire latching coils are fitted here.'
    if (coils.length === 0 || coils.includes('not known')) return 'The kind of some coils is not stated.'
    return absent('no two-wire latching coil')
  },
  editions: { everywhere: ['common-practice'] },
  worked: { example: { coils: ['DC latching 2-wire'] }, instead: { coils: ['DC latching 3-wire'] } }
})
