import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'

export const WATER_EXPOSURES = ['rain', 'jets', 'powerful jets', 'temporary immersion', 'continuous immersion'] as const
export type WaterExposure = (typeof WATER_EXPOSURES)[number]

/** Second numeral that covers an exposure (IEC 60529): 4 splashing, 5 jets, 6 powerful jets, 7 temporary, 8 continuous immersion. */
const NUMERAL: Readonly<Record<WaterExposure, number>> = {
  rain: 4,
  jets: 5,
  'powerful jets': 6,
  'temporary immersion': 7,
  'continuous immersion': 8
}

/** Up to 6 a numeral covers the lower ones; 7 and 8 do not cover jets. */
const HIGHEST_CUMULATIVE = 6

/** NEMA 250 types that meet or exceed an IP code; there is no way back from IP to a type. */
const NEMA: Readonly<Record<string, readonly number[]>> = { '3r': [4], '4': [5, 6], '4x': [5, 6], '6': [7], '6p': [7] }

/**
 * Whether an ingress code covers an exposure. "IP67" covers temporary immersion and not jets; "IP66/IP67" covers both. NEMA types 3R, 4, 4X, 6
 * and 6P are taken as the IP code they meet. Absent where the words are no code known here.
 */
export function ingressCovers(code: string, exposure: WaterExposure): Maybe<boolean> {
  const numerals = secondNumerals(code)
  if (numerals.length === 0)
    return absent(`“${code}” is not an ingress code known here; write “IP67”, “IP66/IP68” or “NEMA 6P”`)
  const wanted = NUMERAL[exposure]
  return numerals.some(numeral => covers(numeral, wanted))
}

function covers(numeral: number, wanted: number): boolean {
  if (numeral <= HIGHEST_CUMULATIVE) return wanted <= numeral
  // Standing under water covers rain as well; only jets strike in a way that immersion does not try.
  if (wanted < NUMERAL.jets) return true
  return wanted > HIGHEST_CUMULATIVE && wanted <= numeral
}

function secondNumerals(code: string): readonly number[] {
  const text = code.toLowerCase().replaceAll(/[\s\u00a0]+/gu, ' ')
  const nema = /\b(?:nema|type)(?: type)? ?(3r|4x|4|6p|6)\b/u.exec(text)?.[1]
  if (nema) return NEMA[nema] ?? []
  const chain = /\bip ?[0-6x]\dk?(?: ?(?:\/|&|and) ?(?:ip ?)?[0-6x]\dk?)*/u.exec(text)?.[0] ?? ''
  return [...chain.matchAll(/[0-6x](\d)/gu)].map(match => Number(match[1])).filter(numeral => numeral <= 8)
}
