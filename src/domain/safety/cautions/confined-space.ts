import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const confinedSpace = caution({
  id: 'confined-space',
  signal: 'DANGER',
  graded: 'Bad air kills within minutes, and gives no sign.',
  scope: 'site',
  rank: 3,
  atBox: false,
  applies: ({ vault, place, supplies }) => {
    if (vault === true) return 'Somebody climbs into a meter pit or a vault here.'
    if (vault === false) return absent('no pit or vault is entered')
    if (place === 'roof') return absent('a roof has no pit')
    if (supplies.length === 0) return 'The site file does not say whether a pit or a vault is entered.'
    const below = supplies.find(supply => supply.metered || supply.backflow === 'fitted')
    return below
      ? `Supply ${below.id} has a meter or a backflow assembly, and the file does not say whether its pit is entered.`
      : absent('no meter and no backflow assembly')
  },
  editions: {
    US: ['osha-1910-146', 'osha-1926-aa'],
    GB: ['hse-l101'],
    AU: ['as-2865'],
    NZ: ['as-2865']
  },
  worked: { example: { vault: true }, instead: { vault: false } }
})
