import type { GonePage } from './pages.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { Words } from '../words/words.ts'

/** The page of a tag that no longer stands for a box: a code that was printed always answers. */
export function makeGonePage(entry: RegisteredTag, siteTitle: string, words: Words): GonePage {
  const w = words.boxPage.gone
  const box = `${entry.box}, ${siteTitle}`
  const text = {
    live: w.unplaced(box),
    moved: w.moved(box, entry.now ?? ''),
    retired: w.retired(box),
    replaced: w.replaced(box)
  }[entry.state]
  const now =
    entry.state === 'replaced' && entry.now ? { tag: entry.now, href: `../${entry.now}/index.html` } : undefined
  return {
    kind: 'gone',
    tag: entry.tag,
    language: words.language,
    title: w.title(entry.tag),
    text,
    ...(now ? { now } : {})
  }
}
