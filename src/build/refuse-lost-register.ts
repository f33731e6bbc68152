import { Refusal } from '../base/refusal.ts'
import type { KeptFleet } from './kept-fleet.ts'

/**
 * Without the register the pages of tags that are retired, moved or replaced would be taken away, and printed codes would lead nowhere: nothing
 * is built while none of it can be read.
 */
export function refuseLostRegister({ sources, register, general }: KeptFleet): void {
  const [first] = general.filter(one => one.place.file === sources.register?.file)
  if (register.length > 0 || !first) return
  throw new Refusal(
    `${first.place.file}: ${first.message}`,
    `${first.fix} Nothing was written: a tag that was issued always keeps its page.`
  )
}
