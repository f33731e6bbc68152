import type { FrontMatter } from '../front-matter.ts'
import { writtenAt } from '../place.ts'

/**
 * What to write instead, as the writer writes: the key and the value, or the value alone in a list, in quotes where the old value had them
 * or where YAML needs them.
 */
export function corrected(front: FrontMatter, path: readonly (string | number)[], value: string): string {
  const key = path.at(-1)
  const quoted = inQuotes(value, writtenAt(front, path) ?? '')
  return typeof key === 'string' ? `${key}: ${quoted}` : quoted
}

function inQuotes(value: string, old: string): string {
  if (/^["'[{]/u.test(value)) return value
  const quote = /^["']/u.exec(old)?.[0] ?? (/^[-?:,&*#!|>%@`]|[,[\]{}]|: | #/u.test(value) ? '"' : '')
  return `${quote}${value}${quote}`
}
