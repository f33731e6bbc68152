import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'
import { latchingOrUnknown } from '../latching.ts'

export const acOnLatching = caution({
  id: 'ac-on-latching',
  signal: 'NOTICE',
  graded: 'Only the coil is lost.',
  scope: 'step',
  rank: 2,
  atBox: true,
  applies: facts => latchingOrUnknown(facts) ?? absent('no coil here latches'),
  editions: { everywhere: ['product-sheet', 'umd-solenoid', 'common-practice'] },
  worked: { example: { coils: ['DC latching 3-wire'] }, instead: { coils: ['24 V AC'] } }
})
