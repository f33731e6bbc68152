import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { BOX_LOCATIONS, EN_124_CLASSES, LEAST_LOADS, SCTE_TIERS } from '../../reference/box-loads.ts'
import type { BoxLocation } from '../../reference/box-loads.ts'
import type { Calculation } from '../calculation.ts'
import { optionalText, textOf } from '../inputs.ts'
import { parseLoadRating } from './load-rating.ts'

/** "Tier 15 or C250". */
export const leastLoadWords = (location: BoxLocation): string => LEAST_LOADS[location].words

/**
 * Whether a rating as written is enough for a place. Absent where the words are no known rating. No SCTE tier is for traffic that drives over
 * on purpose, so every tier is too little in a carriageway; AASHTO H-20 and up is enough everywhere.
 */
export function ratingIsEnough(rating: string, location: BoxLocation): Maybe<boolean> {
  const parsed = parseLoadRating(rating)
  if (!parsed) return absent(`“${rating}” is not a rating known here; write “Tier 15”, “B125” or “H-20”`)
  const least = LEAST_LOADS[location]
  if (parsed.ladder === 'aashto') return true
  if (parsed.ladder === 'en') return parsed.step >= least.en
  return least.tier !== undefined && parsed.step >= least.tier
}

export const boxLoad: Calculation = {
  name: 'box-load',
  title: 'Load rating of a box and its lid',
  does: 'Gives the least load rating for the place a box lies in, and says whether a rating is enough.',
  inputs: {
    location: { kind: { is: 'choice', of: BOX_LOCATIONS }, does: 'where the box lies' },
    rating: {
      kind: { is: 'text' },
      does: 'rating on the lid: "Tier 15", "B125", "H-20"',
      optional: 'only the least is given'
    }
  },
  outputs: {
    least: { does: 'least rating', unit: '' },
    'scte-tier': { does: 'least ANSI/SCTE 77 tier, or "none will do"', unit: '' },
    'en-class': { does: 'least EN 124 class', unit: '' },
    enough: { does: 'whether the given rating is enough, where one is given', unit: '' }
  },
  sources: ['scte-77', 'en-124', 'aashto-h20', 'project-rule'],
  limits:
    'The designer and the road authority decide. Tiers are for traffic that drives over by mistake. A box in the truck apron of a roundabout lies in the carriageway.',
  run: inputs => {
    const location = textOf(inputs, 'location') as BoxLocation
    const rating = optionalText(inputs, 'rating')
    const least = LEAST_LOADS[location]
    const enough = rating === undefined ? undefined : ratingIsEnough(rating, location)
    if (typeof enough === 'object') return enough
    const tier = least.tier === undefined ? 'none will do' : SCTE_TIERS[least.tier]!.tier
    return {
      value: {
        least: least.words,
        'scte-tier': tier,
        'en-class': EN_124_CLASSES[least.en]!.name,
        ...(enough === undefined ? {} : { enough })
      },
      steps: [
        `${location}: ${least.words} at least (rule of this project, from the uses that the standards name)`,
        ...(enough === undefined ? [] : [`${rating}: ${enough ? 'enough' : 'not enough'}`])
      ]
    }
  },
  example: {
    inputs: { location: 'median or verge that vehicles can reach', rating: 'B125' },
    outputs: { least: 'Tier 15 or C250', 'scte-tier': 'Tier 15', 'en-class': 'C250', enough: false }
  }
}
