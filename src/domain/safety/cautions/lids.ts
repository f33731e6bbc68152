import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const lids = caution({
  id: 'lids',
  signal: 'CAUTION',
  graded: 'Lids crush fingers and strain backs.',
  scope: 'step',
  rank: 4,
  atBox: false,
  applies: ({ boxes }) =>
    boxes > 0 ? `${boxes} ${boxes === 1 ? 'box has a lid' : 'boxes have lids'} to lift.` : absent('no box is listed'),
  editions: {
    everywhere: ['common-practice'],
    GB: ['gb-manual-handling'],
    EU: ['eu-90-269'],
    AU: ['au-manual-tasks-cop']
  },
  worked: { example: { boxes: 1 }, instead: { boxes: 0 } }
})
