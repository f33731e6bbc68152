import type { FrontMatter } from '../front-matter.ts'
import { writtenAt } from '../place.ts'

type Path = readonly (string | number)[]

/** The key that a message names: the last of the path that is a word. */
export function keyOf(path: Path): string {
  return String(path.findLast(step => typeof step === 'string') ?? '')
}

/** Where a key stands, for one that is missing: under "battery", in entry 3 of "stations", or nowhere but the file. */
export function under(path: Path): string {
  const [parent, grand] = [path.at(-2), path.at(-3)]
  if (typeof parent === 'number') return `in entry ${parent + 1} of "${String(grand)}"`
  return parent === undefined ? '' : `under "${parent}"`
}

/** Which entry of a list it is, where it is one. */
export function entryOf(path: Path): { readonly entry?: number } {
  const last = path.at(-1)
  return typeof last === 'number' ? { entry: last + 1 } : {}
}

/** What stands there, as a message quotes it: the key and the value without its quotes, or the value alone in a list. */
export function fragment(front: FrontMatter, path: Path): string {
  const written = (writtenAt(front, path) ?? '').replace(/^(["'])(.*)\1$/su, '$2')
  return typeof path.at(-1) === 'string' ? `${path.at(-1)}: ${shortened(written)}` : shortened(written)
}

/** On one line, and not longer than a line of a message can bear. */
export function shortened(text: string): string {
  const line = text.replace(/\s+/gu, ' ')
  return line.length > 60 ? `${line.slice(0, 57)}...` : line
}
