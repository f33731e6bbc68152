import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const backflow = caution({
  id: 'backflow',
  signal: 'WARNING',
  graded: 'Dirty water in a drinking main can make many people gravely ill.',
  scope: 'site',
  rank: 5,
  atBox: false,
  applies: ({ supplies }) => {
    if (supplies.length === 0) return 'The site file does not say where the water comes from.'
    const joined = supplies.find(supply => supply.water === 'drinking water' || supply.backflow === 'fitted')
    return joined ? `Supply ${joined.id} may be joined to drinking water.` : absent('no supply is drinking water')
  },
  editions: {
    US: ['upc-603-4-2'],
    GB: ['gb-water-fittings'],
    EU: ['en-1717'],
    AU: ['as-nzs-3500-1'],
    NZ: ['as-nzs-3500-1']
  },
  worked: {
    example: { supplies: [{ id: 'S1', water: 'drinking water', backflow: 'not stated', metered: false }] },
    instead: { supplies: [{ id: 'S1', water: 'raw', backflow: 'not stated', metered: false }] }
  }
})
