import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'
import { latchingOrUnknown } from '../latching.ts'

export const valveStaysOpen = caution({
  id: 'valve-stays-open',
  signal: 'NOTICE',
  graded: 'Water that runs on damages planting and paving.',
  scope: 'site',
  rank: 1,
  // The box page tells how to stop the water before all else.
  atBox: false,
  applies: facts => latchingOrUnknown(facts) ?? absent('no coil here latches'),
  editions: { everywhere: ['lajara-2011', 'common-practice'] },
  worked: { example: { coils: ['DC latching 2-wire'] }, instead: { coils: ['24 V AC'] } }
})
