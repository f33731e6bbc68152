import type { BoxLocation } from '../../reference/box-loads.ts'

/** Words for where one box lies, the heaviest first. Only words that say what the box lies in: "2 m from the road" is not in it. */
const WORDS: readonly (readonly [RegExp, BoxLocation])[] = [
  [/\b(truck apron|carriageway|(in|within|under) the (road|street|lane|travel lane))\b/u, 'carriageway'],
  [/\b(in|within|under) (the |a )?(parking|car park|driveway)|\bparking (lot|bay|strip)\b/u, 'parking or driveway'],
  [/\b(in|within|under) (the |a )?(sidewalk|footway|footpath)\b/u, 'sidewalk']
]

const ROADSIDE: readonly string[] = ['roundabout', 'median', 'verge']

/** What a box lies in, from the words for where it is and from the kind of site; a roadside site counts as reachable by vehicles. */
export function boxLocationOf(place: string, where: string | undefined): BoxLocation {
  const text = where?.toLowerCase() ?? ''
  const named = WORDS.find(([pattern]) => pattern.test(text))?.[1]
  if (named) return named
  return ROADSIDE.includes(place) ? 'median or verge that vehicles can reach' : 'lawn or planting'
}
