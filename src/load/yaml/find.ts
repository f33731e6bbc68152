import { isMap, isNode, isSeq } from 'yaml'
import type { Node, Pair } from 'yaml'
import { keyText } from './plain.ts'

/** Where a path of keys leads: the value, its key where it has one, and whether the whole path is written. */
export interface Found {
  readonly value: Node | undefined
  readonly key: Node | undefined
  readonly whole: boolean
}

/** Follows the path as far as it is written. */
export function findNode(root: Node | null, path: readonly (string | number)[]): Found {
  let found: Found = { value: root ?? undefined, key: undefined, whole: true }
  for (const step of path) {
    const next = stepInto(found.value, step)
    if (!next) return { ...found, whole: false }
    found = next
  }
  return found
}

function stepInto(node: Node | undefined, step: string | number): Found | undefined {
  if (isSeq(node)) {
    const item = node.items[Number(step)]
    return isNode(item) ? { value: item, key: undefined, whole: true } : undefined
  }
  const pair: Pair | undefined = isMap(node) ? node.items.findLast(one => keyText(one.key) === String(step)) : undefined
  return (
    pair && {
      value: isNode(pair.value) ? pair.value : undefined,
      key: isNode(pair.key) ? pair.key : undefined,
      whole: true
    }
  )
}
