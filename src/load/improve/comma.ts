import { isMap, isScalar } from 'yaml'
import type { FrontMatter } from '../front-matter.ts'
import { findNode } from '../yaml/find.ts'
import { keyText } from '../yaml/plain.ts'

/**
 * `{ length: 36,5 m }` is read as two keys, "length: 36" and "5 m" with nothing after it. The key before and the number that was meant,
 * where an unknown key is such a half; undefined otherwise.
 */
export function splitByComma(
  front: FrontMatter,
  path: readonly (string | number)[],
  key: string
): { readonly key: string; readonly value: string } | undefined {
  if (!/^(\d+)(?:\s*\D.*)?$/u.test(key)) return undefined
  const before = valueBefore(front, path, key)
  if (!before || !/^[+-]?(?:\d+|[1-9]\d{0,2}(?:\.\d{3})+)$/u.test(before.value)) return undefined
  return { key: before.key, value: `${before.value.replaceAll('.', '')}.${key}` }
}

/** The same of "fitted: Apr 14, 2025". */
export function dateSplitByComma(
  front: FrontMatter,
  path: readonly (string | number)[],
  key: string
): { readonly key: string; readonly value: string } | undefined {
  const before = /^\d{4}$/u.test(key) ? valueBefore(front, path, key) : undefined
  if (!before || !/^(?:[A-Za-z]{3,}\.? \d{1,2}|\d{1,2} [A-Za-z]{3,})\.?$/u.test(before.value)) return undefined
  return { key: before.key, value: `${before.value}, ${key}` }
}

/** The entry of the map that stands before a key, its value as written. */
function valueBefore(
  front: FrontMatter,
  path: readonly (string | number)[],
  key: string
): { readonly key: string; readonly value: string } | undefined {
  const { value: map } = findNode(front.root, path)
  if (!isMap(map)) return undefined
  const before = map.items[map.items.findIndex(pair => keyText(pair.key) === key) - 1]
  return before && isScalar(before.value) ? { key: keyText(before.key), value: before.value.source ?? '' } : undefined
}
