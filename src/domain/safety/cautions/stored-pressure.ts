import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const storedPressure = caution({
  id: 'stored-pressure',
  signal: 'CAUTION',
  graded: 'Water at supply pressure bruises, cuts or gets in an eye; it seldom does worse.',
  scope: 'step',
  rank: 3,
  atBox: true,
  applies: ({ stations, boxes }) =>
    stations > 0 || boxes > 0
      ? 'Valves here are opened by hand under pressure.'
      : absent('no valve and no box is listed'),
  editions: {
    US: ['osha-1910-147'],
    GB: ['gb-puwer'],
    EU: ['eu-2009-104'],
    AU: ['au-plant-cop']
  },
  worked: { example: { stations: 4 }, instead: { stations: 0, boxes: 0 } }
})
