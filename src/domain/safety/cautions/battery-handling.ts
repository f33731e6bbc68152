import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const batteryHandling = caution({
  id: 'battery-handling',
  signal: 'CAUTION',
  graded: 'Cells of this size burn a finger or irritate skin and eyes.',
  scope: 'step',
  rank: 5,
  atBox: false,
  applies: ({ batteries }) =>
    batteries.length > 0 ? `Controllers here run on ${batteries.join(', ')}.` : absent('no battery is listed'),
  editions: { everywhere: ['iec-60086-5', 'iec-60086-4'] },
  worked: { example: { batteries: ['9 V alkaline'] }, instead: { batteries: [] } }
})
