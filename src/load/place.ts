import { isScalar } from 'yaml'
import type { Node } from 'yaml'
import type { Place } from '../diagnostics/finding.ts'
import type { FrontMatter } from './front-matter.ts'
import { placeAt, placeOfLine } from './lines.ts'
import { findNode } from './yaml/find.ts'

type Path = readonly (string | number)[]

/**
 * The place of a fact. A value stands at itself; a map or a list stands at its key; a key that is not written stands at the nearest one
 * above it that is, and one that is missing at the top stands at the first line.
 */
export function placeOf(front: FrontMatter, path: Path): Place {
  const { value, key, whole } = findNode(front.root, path)
  if (whole && isScalar(value) && width(value) > 0) return nodePlace(front, value)
  const node = key ?? value
  return node === undefined || node === front.root ? placeOfLine(front.lines, 1) : nodePlace(front, node)
}

/** The place of the last key of a path, which is written. */
export function placeOfKey(front: FrontMatter, path: Path): Place {
  const { key, whole } = findNode(front.root, path)
  return whole && key ? nodePlace(front, key) : placeOf(front, path)
}

/** A value as it stands in the file, quotes and all; undefined where the path is not written. */
export function writtenAt(front: FrontMatter, path: Path): string | undefined {
  const { value, whole } = findNode(front.root, path)
  const [start, end] = value?.range ?? []
  if (!whole || start === undefined || end === undefined) return undefined
  return front.lines.text.slice(front.base + start, front.base + end).trim()
}

function nodePlace(front: FrontMatter, node: Node): Place {
  return placeAt(front.lines, front.base + (node.range?.[0] ?? 0), width(node))
}

function width(node: Node): number {
  const [start = 0, end = 0] = node.range ?? []
  return end - start
}
