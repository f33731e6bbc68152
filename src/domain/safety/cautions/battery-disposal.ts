import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const batteryDisposal = caution({
  id: 'battery-disposal',
  signal: 'NOTICE',
  graded: 'It is about waste law and the ground.',
  scope: 'step',
  rank: 5,
  atBox: false,
  applies: ({ batteries }) =>
    batteries.length > 0 ? `Spent cells here: ${batteries.join(', ')}.` : absent('no battery is listed'),
  editions: {
    everywhere: ['common-practice'],
    US: ['epa-household-batteries', 'ca-dtsc-batteries'],
    GB: ['gb-waste-batteries'],
    EU: ['eu-2023-1542']
  },
  worked: { example: { batteries: ['AA alkaline'] }, instead: { batteries: [] } }
})
