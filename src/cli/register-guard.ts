import { Refusal } from '../base/refusal.ts'
import type { Assessment } from '../build/assess.ts'

/**
 * Refuses to write the register while a line of it cannot be read: it is written whole, so that line, and with it a tag that was issued, would
 * be lost for good. One that is not there may be started only from the tags of all sites.
 */
export function refuseBrokenRegister({ general }: Pick<Assessment, 'general'>, mayStart = false): void {
  const [first] = general.filter(one => one.severity === 'error' || (one.code === 'tag/no-register' && !mayStart))
  if (!first) return
  const { file, line } = first.place
  throw new Refusal(
    `${file}:${line}: ${first.message}`,
    `${first.fix} Nothing was written: a tag that was issued must never be lost.`
  )
}
