import type { SourceText } from '../load/loaded.ts'
import type { SiteSources } from './read-fleet.ts'

/** Every site is shaped by it, named or not. */
const ALWAYS = /(?:^|\/)_shared\/company\.md$/u

/**
 * The shared files that a site may lead to: those whose name stands in one of its texts, and those whose name stands in these in turn. More may be
 * found than are read; none that is read is missed, since a path ends in the file's name. A name written with escapes, or broken over lines,
 * cannot be seen, so a text with a backslash leads to all of them, and a file whose name has a space in it belongs to every site.
 */
export function sharedUses(sources: SiteSources, shared: readonly SourceText[]): readonly SourceText[] {
  const texts = [sources.site, ...sources.visits].flatMap(one => (one ? [one.text] : []))
  if (texts.some(text => text.includes('\\'))) return shared
  const used = new Set(shared.filter(one => ALWAYS.test(one.file) || /\s/u.test(nameOf(one))))
  const look = [...texts, ...[...used].map(one => one.text)]
  for (let text = look.pop(); text !== undefined; text = look.pop()) {
    for (const one of shared) {
      if (used.has(one) || !text.includes(nameOf(one))) continue
      used.add(one)
      look.push(one.text)
    }
  }
  return shared.filter(one => used.has(one))
}

function nameOf({ file }: SourceText): string {
  return file.slice(file.lastIndexOf('/') + 1)
}
