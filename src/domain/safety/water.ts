import type { Water } from './facts.ts'

const RECLAIMED = /reclaim|recycl|re-?use|effluent|gr[ae]y ?water|purple/iu
const RAW = /\b(?:pond|lake|river|canal|ditch|creek|rain|well|bore|cistern|tank|non-?potable|raw)/iu

/** The kind of a supply as the file words it. Anything that is neither reclaimed nor plainly raw is taken for drinking water. */
export function waterOf(kind: string): Water {
  if (RECLAIMED.test(kind)) return 'reclaimed'
  return RAW.test(kind) ? 'raw' : 'drinking water'
}
