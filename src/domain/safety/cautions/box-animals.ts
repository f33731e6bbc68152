import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const boxAnimals = caution({
  id: 'box-animals',
  signal: 'CAUTION',
  graded: 'Most bites, stings and cuts at a box are minor or moderate.',
  scope: 'site',
  rank: 2,
  atBox: true,
  applies: ({ boxes, boxHazards }) => {
    if (boxHazards.length > 0) return `The boxes’ own lists name: ${boxHazards.join(', ')}.`
    return boxes > 0 ? 'Valve boxes are dark, damp and seldom opened.' : absent('no box is listed')
  },
  editions: { everywhere: ['niosh-outdoor', 'common-practice'] },
  worked: { example: { boxes: 3 }, instead: { boxes: 0 } }
})
