import type { CoverLocation } from '../../reference/nec-300-5.ts'

/** Looked through in this order, so that "road" wins over "lawn" where both are named, and the deeper reading wins where words are open. */
const WORDS: readonly (readonly [RegExp, CoverLocation])[] = [
  [/\b(runway|airfield|airport)\b/u, 'airport runway'],
  [
    /\b(private|home|house|dwelling|residential|one-family|two-family|1-2 family)\b.*\b(drive|driveway|parking)\b/u,
    'one- or two-family driveway'
  ],
  [
    /\b(road|roadway|street|highway|alley|carriageway|lane|lanes|driveway|drive|parking|car park|asphalt|tarmac|blacktop|bus stop|truck apron)\b/u,
    'street, road, driveway or parking lot'
  ],
  [/\bunder (a )?building\b|\bbuilding\b/u, 'under a building'],
  [/\bslab\b/u, 'under a 4 in slab without vehicles'],
  [/\bconcrete\b/u, 'trench under 2 in concrete'],
  // "Pavement" is a footway to some and a road to others.
  [/\bpavement\b/u, 'street, road, driveway or parking lot']
]

/** The row of the cover table that a site file's words mean ("under: road"). No words, or none of these, is open ground. */
export function coverLocationOf(words: string | undefined): CoverLocation {
  const text = words?.toLowerCase() ?? ''
  return WORDS.find(([pattern]) => pattern.test(text))?.[1] ?? 'open ground'
}
