import { Refusal } from '../base/refusal.ts'
import type { KeptFleet } from './kept-fleet.ts'
import { readMarker } from './output-marker.ts'
import { tagsOfSites } from './rivals.ts'

const KEEPS = 'Nothing was written: a tag that was issued always keeps its page.'

/**
 * Without the register the pages of tags that are retired, moved or replaced would be taken away, and printed codes would lead nowhere: nothing
 * is built while none of it can be read, nor where it is gone and the last output answers for such a tag.
 */
export function refuseLostRegister({ sources, register, general }: KeptFleet, out: string): void {
  if (register.length > 0) return
  const [first] = general.filter(one => one.severity === 'error' && one.place.file === sources.register?.file)
  if (first) throw new Refusal(`${first.place.file}: ${first.message}`, `${first.fix} ${KEEPS}`)
  const carried = new Set([...tagsOfSites(sources).values()].flatMap(one => one.tags))
  refuseForgottenTags(out, carried, sources.folder)
}

/** The same where only the tags are known that sites carry: in a merge of parts that were built without a register. */
export function refuseForgottenTags(out: string, carried: ReadonlySet<string>, folder: string): void {
  const answered = (readMarker(out)?.files ?? []).flatMap(
    path => /^public\/B\/([^/]+)\/index\.html$/u.exec(path)?.[1] ?? []
  )
  const forgotten = answered.filter(tag => !carried.has(tag))
  if (forgotten.length === 0) return
  const some = `${forgotten.slice(0, 5).join(', ')}${forgotten.length > 5 ? ', …' : ''}`
  throw new Refusal(
    `There is no register ${folder}/tags.csv, and the last output in ${out} answers for ${forgotten.length === 1 ? 'a tag' : `${forgotten.length} tags`} that no site carries: ${some}`,
    `Put the register back. ${KEEPS} Where none of these was ever printed, take ${out} away and build again.`
  )
}
