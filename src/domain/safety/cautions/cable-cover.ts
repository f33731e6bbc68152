import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const cableCover = caution({
  id: 'cable-cover',
  signal: 'NOTICE',
  graded: 'A cut control cable, 30 V or less, stops a valve.',
  scope: 'step',
  rank: 4,
  atBox: false,
  applies: ({ place, stations, boxes }) => {
    if (place === 'roof') return absent('no cable is buried in a roof')
    return stations > 0 || boxes > 0 ? 'Control cable is buried here.' : absent('no station and no box is listed')
  },
  editions: {
    US: ['nec-300-5'],
    GB: ['bs-7671'],
    EU: ['hd-60364-5-52'],
    AU: ['as-nzs-3000'],
    NZ: ['as-nzs-3000']
  },
  worked: { example: { stations: 2 }, instead: { stations: 2, place: 'roof' } }
})
