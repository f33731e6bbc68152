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
  const half = /^(\d+)(?:\s*\D.*)?$/u.test(key)
  const { value: map } = findNode(front.root, path)
  if (!half || !isMap(map)) return undefined
  const index = map.items.findIndex(pair => keyText(pair.key) === key)
  const before = map.items[index - 1]
  if (!before || !isScalar(before.value) || !/^[+-]?\d+$/u.test(before.value.source ?? '')) return undefined
  return { key: keyText(before.key), value: `${before.value.source}.${key}` }
}
