import { Refusal } from '../base/refusal.ts'
import type { Assessment } from '../build/assess.ts'

/**
 * Refuses to write the register while a line of it cannot be read: it is written whole, so that line, and with it a tag that was issued, would
 * be lost for good.
 */
export function refuseBrokenRegister({ general }: Pick<Assessment, 'general'>): void {
  const [first] = general
  if (!first) return
  const { file, line } = first.place
  throw new Refusal(
    `${file}:${line}: ${first.message}`,
    `${first.fix} Nothing was written: a tag that was issued must never be lost.`
  )
}
