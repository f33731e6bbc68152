import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const reclaimedWater = caution({
  id: 'reclaimed-water',
  signal: 'CAUTION',
  graded: 'Treated wastewater that is swallowed makes ill, as a rule for days.',
  scope: 'site',
  rank: 1,
  atBox: true,
  applies: ({ supplies }) => {
    const reclaimed = supplies.find(supply => supply.water === 'reclaimed')
    return reclaimed ? `Supply ${reclaimed.id} is reclaimed water.` : absent('no supply is reclaimed water')
  },
  editions: {
    US: ['ca-title-22', 'ma-314-cmr-20', 'austin-reclaimed-signs'],
    GB: ['bs-en-16941-2'],
    EU: ['eu-2020-741'],
    AU: ['au-water-recycling'],
    NZ: ['as-nzs-3500-1']
  },
  worked: {
    example: { supplies: [{ id: 'S1', water: 'reclaimed', backflow: 'not stated', metered: true }] },
    instead: { supplies: [{ id: 'S1', water: 'drinking water', backflow: 'fitted', metered: true }] }
  }
})
