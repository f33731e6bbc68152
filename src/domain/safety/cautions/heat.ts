import { caution } from '../card.ts'

export const heat = caution({
  id: 'heat',
  signal: 'WARNING',
  graded: 'Heat stroke can kill, and rest and water prevent it.',
  scope: 'site',
  rank: 7,
  atBox: false,
  applies: ({ place, season }) => {
    if (place === 'glasshouse') return 'The work is in a glasshouse.'
    if (season.half === 'warm') return 'It is the warm half of the year here.'
    return season.half === 'cool'
      ? 'The binder is also read in the warm half of the year.'
      : 'The work is outdoors, and the site file gives no latitude to tell the seasons by.'
  },
  editions: { everywhere: ['osha-heat'] },
  worked: { example: { season: { month: 7, half: 'warm' } } }
})
