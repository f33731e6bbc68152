import { parseQuantity } from '../../units/quantity.ts'

/** A tie as it is written: "9 ft 4 in from the bench end". */
export interface TieText {
  readonly lengthM: number
  /** "9 ft 4 in". */
  readonly amount: string
  /** What it is measured from, as `pointKey` writes it. */
  readonly from: string
}

const TIE = /^(?<amount>.+?)\s+from\s+(?<from>.+)$/iu
const PART = /^[\d.]+\s*[^\d\s]+\s*/u

/** Undefined where it is not so much of a length from something. */
export function readTie(written: string): TieText | undefined {
  const { amount = '', from = '' } = TIE.exec(written.trim())?.groups ?? {}
  let rest = amount.trim()
  let lengthM = 0
  while (rest !== '') {
    const part = PART.exec(rest)?.[0]
    const read = part === undefined ? undefined : parseQuantity(part.trim(), 'length')
    if (part === undefined || !read?.ok) return undefined
    lengthM += read.value.si
    rest = rest.slice(part.length)
  }
  return lengthM > 0 && from !== '' ? { lengthM, amount: amount.trim(), from: pointKey(from) } : undefined
}

/** One writing of the name of a point: without case, article and spare spaces. */
export function pointKey(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/gu, ' ').replace(/^the /u, '')
}
