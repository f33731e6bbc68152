import { isAlias, isMap, isScalar, isSeq } from 'yaml'

/** The deepest key of a site file stands at depth 7; anything far beyond is no site file. */
export const DEEPEST = 40

/**
 * Nodes as plain values. A number stays a number only where it prints back as written: 0391, 1.10 and 2E45678 come out as text, so no code,
 * serial number or tag is changed by being read. Blank values and text of nothing but blanks come out as null: nothing was
 * supplied.
 */
export function plainValue(node: unknown, depth = 0): unknown {
  if (depth > DEEPEST) return null
  if (isScalar(node)) return plainScalar(node.value, node.source)
  if (isSeq(node)) return node.items.map(item => plainValue(item, depth + 1))
  if (isMap(node))
    return Object.fromEntries(node.items.map(pair => [keyText(pair.key), plainValue(pair.value, depth + 1)]))
  return null
}

/**
 * A key as text: `1:` is "1". A list or a map as a key is no key of ours and is not spelled out: brackets in brackets would double in
 * length with each level.
 */
export function keyText(key: unknown): string {
  if (isScalar(key)) return key.source ?? String(key.value)
  if (isAlias(key)) return `*${key.source}`
  return isSeq(key) ? '[…]' : isMap(key) ? '{…}' : ''
}

function plainScalar(value: unknown, source: string | undefined): unknown {
  if (typeof value === 'number') return String(value) === source ? value : (source ?? String(value))
  if (value === undefined || (typeof value === 'string' && value.trim() === '')) return null
  return value
}
