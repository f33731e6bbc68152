import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const chemicalInjection = caution({
  id: 'chemical-injection',
  signal: 'WARNING',
  graded: 'Concentrate can blind or poison; diluted feed mostly does neither.',
  scope: 'site',
  rank: 4,
  atBox: true,
  applies: ({ supplies }) => {
    const dosed = supplies.find(supply => supply.injection !== undefined)
    return dosed ? `Supply ${dosed.id} is dosed: ${dosed.injection}.` : absent('nothing is dosed into the water')
  },
  editions: {
    US: ['wac-16-201-220', 'upc-603-4-2', 'cfr-40-170'],
    GB: ['gb-water-fittings', 'gb-coshh'],
    EU: ['en-1717'],
    AU: ['as-nzs-3500-1'],
    NZ: ['as-nzs-3500-1']
  },
  worked: {
    example: {
      supplies: [{ id: 'S1', water: 'drinking water', backflow: 'fitted', metered: true, injection: 'liquid feed' }]
    },
    instead: { supplies: [{ id: 'S1', water: 'drinking water', backflow: 'fitted', metered: true }] }
  }
})
