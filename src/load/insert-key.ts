import { isMap, isScalar, parseDocument } from 'yaml'
import type { Pair, YAMLMap } from 'yaml'

export interface Insertion {
  /** Keys that lead to the mapping, from the top of the front matter. */
  readonly path: readonly (string | number)[]
  /** The key it goes after. */
  readonly after: string
  readonly key: string
  readonly value: string
}

/**
 * The text of a file with one key more in its front matter, everything else as it was: comments, order, line ends, spaces. A key
 * that is there already gets the new value. Undefined where the mapping is not there.
 */
export function insertKey(text: string, { path, after, key, value }: Insertion): string | undefined {
  const start = /^\ufeff?---[^\n]*\n/u.exec(text)?.[0].length
  if (start === undefined) return undefined
  const end = text.slice(start).search(/^---\s*$/mu)
  const front = end < 0 ? text.slice(start) : text.slice(start, start + end)
  const map = parseDocument(front, { strict: false }).getIn(path, true)
  if (!isMap(map)) return undefined
  const present = pairOf(map, key)
  const range = rangeOf(present ?? pairOf(map, after))
  if (!range) return undefined
  const [valueStart, valueEnd, keyStart] = range.map(offset => offset + start) as [number, number, number]
  if (present) return text.slice(0, valueStart) + value + text.slice(valueEnd)
  if (map.flow) return `${text.slice(0, valueEnd)}, ${key}: ${value}${text.slice(valueEnd)}`
  const lineEnd = text.indexOf('\n', valueEnd)
  const at = lineEnd < 0 ? text.length : text[lineEnd - 1] === '\r' ? lineEnd - 1 : lineEnd
  const newline = text.includes('\r\n') ? '\r\n' : '\n'
  const indent = ' '.repeat(keyStart - (text.lastIndexOf('\n', keyStart - 1) + 1))
  return `${text.slice(0, at)}${newline}${indent}${key}: ${value}${text.slice(at)}`
}

function pairOf(map: YAMLMap, key: string): Pair | undefined {
  return map.items.find(pair => isScalar(pair.key) && pair.key.value === key)
}

function rangeOf(pair: Pair | undefined): [valueStart: number, valueEnd: number, keyStart: number] | undefined {
  if (!pair || !isScalar(pair.key) || !isScalar(pair.value)) return undefined
  const [value, key] = [pair.value.range, pair.key.range]
  return value && key ? [value[0], value[1], key[0]] : undefined
}
