import type { WaterExposure } from './ingress.ts'

/** Words that say what water does to a box, the hardest first. Only words that say it outright: "near the river" is no flood. */
const WORDS: readonly (readonly [RegExp, WaterExposure])[] = [
  [/\b(jet|pressure|power)[- ]?wash(ed|ing|es)?\b|\bstreet (cleaning|washing)\b/iu, 'powerful jets'],
  [/\bhosed? (down|off|out)\b|\bwater jets?\b|\bsprinklers? (hit|strike|spray)s?\b/iu, 'jets'],
  [
    /\b(stands|sits|stays|lies|always|permanently) (\w+ )?(in|under) (\w+ )?water\b|\bpermanently (wet|flooded)\b/iu,
    'continuous immersion'
  ],
  [
    /\bflood(s|ed|ing)?\b|\bfills (up )?(with (\w+ )?water|after)\b|\bsubmerged\b|\bstanding water\b|\bunder water\b/iu,
    'temporary immersion'
  ]
]

const DENIED = /\b(no|not|never|nor|without)\b/iu

export interface StatedExposure {
  readonly exposure: WaterExposure
  /** The words that say so, as written. */
  readonly said: string
}

/** What water is said to do to a box: each exposure once, with the first text that says it. A text that denies it says nothing. */
export function statedExposures(texts: readonly (string | undefined)[]): readonly StatedExposure[] {
  return WORDS.flatMap(([pattern, exposure]) => {
    const said = texts.find(text => text !== undefined && pattern.test(text) && !DENIED.test(text))
    return said === undefined ? [] : [{ exposure, said }]
  })
}
