import { absent } from '../../../base/absent.ts'
import { caution } from '../card.ts'

export const mains = caution({
  id: 'mains',
  signal: 'DANGER',
  graded: 'A hand on a live mains part gets a shock that stops hearts.',
  scope: 'site',
  rank: 2,
  atBox: true,
  applies: ({ adapter, pump }) => {
    if (adapter && pump) return 'A controller has a mains adapter, and a pump is on the site.'
    if (adapter) return 'A controller has a mains adapter.'
    return pump ? 'A pump is on the site.' : absent('no adapter and no pump')
  },
  editions: {
    US: ['nfpa-70e', 'osha-1910-333'],
    GB: ['gb-electricity-at-work'],
    EU: ['en-50110'],
    AU: ['as-nzs-4836'],
    NZ: ['as-nzs-4836']
  },
  worked: { example: { adapter: true }, instead: { adapter: false, pump: false } }
})
