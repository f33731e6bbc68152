import { IEC_60228 } from '../../reference/iec-60228.ts'
import type { IecColumn } from '../../reference/iec-60228.ts'
import type { WireMake } from './make.ts'

/** The greatest resistance of IEC 60228 at 20 °C for a nominal area; undefined where the table has no such size. */
export function iecOhmPerM(
  areaMm2: number,
  make: WireMake
): { readonly ohmPerM: number; readonly words: string } | undefined {
  const row = IEC_60228.rows.find(one => one.mm2 === areaMm2)
  if (!row) return undefined
  const flexible = make.conductor === 'flexible'
  const column: IecColumn =
    make.coating === 'plain' ? (flexible ? 'plain5' : 'plain12') : flexible ? 'tinned5' : 'coated12'
  const words = `IEC 60228, ${flexible ? 'class 5' : 'class 1 and 2'}, ${make.coating} copper`
  return { ohmPerM: row[column] / 1000, words }
}
