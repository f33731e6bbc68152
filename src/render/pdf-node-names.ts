import { isStream, reference } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'

const NAME = /\((node\d+)\)/gu

/**
 * The objects with the names of structure nodes counted anew, in the order in which they stand in the file. A browser names them by
 * what else it was doing, and not even in order; cells name their heads by them. The tree of names is written anew as one list,
 * which has to be sorted. ISO 32000-1:2008, 7.9.6 and 14.7.2.
 */
export function withEvenNodeNames({ objects, root }: PdfFile): Map<number, string> {
  const numbers = [...objects.keys()].sort((a, b) => a - b)
  const owners = numbers.flatMap(number => ownName(objects.get(number) ?? '').map(name => ({ name, number })))
  const even = new Map(owners.map(({ name }, index) => [name, `node${String(index + 1).padStart(8, '0')}`]))
  const renamed = new Map([...objects].map(([number, object]) => [number, rename(object, even)]))
  const tree = treeOfNames(objects, root)
  if (tree === undefined) return renamed
  for (const number of below(objects, tree)) renamed.delete(number)
  const entries = owners.map(({ name, number }) => `(${even.get(name)}) ${number} 0 R`)
  return renamed.set(tree, `<</Names [${entries.join(' ')}]>>`)
}

function ownName(object: string): string[] {
  const match = !object.includes('/ID (node') || isStream(object) ? null : /\/ID \((node\d+)\)/u.exec(object)
  return match?.[1] === undefined ? [] : [match[1]]
}

/** Streams and bookmarks are left alone: what looks like a name there is somebody's text. */
function rename(object: string, names: ReadonlyMap<string, string>): string {
  if (!object.includes('(node') || isStream(object) || object.startsWith('<</Title ')) return object
  return object.replace(NAME, (whole, name: string) => (names.has(name) ? `(${names.get(name)})` : whole))
}

function treeOfNames(objects: PdfFile['objects'], root: number): number | undefined {
  const structure = reference(objects.get(root), 'StructTreeRoot')
  return structure === undefined ? undefined : reference(objects.get(structure), 'IDTree')
}

/** Object numbers of the branches and leaves below a node of the tree. */
function below(objects: PdfFile['objects'], node: number): number[] {
  const kids = /\/Kids \[([^\]]*)\]/u.exec(objects.get(node) ?? '')?.[1] ?? ''
  const numbers = [...kids.matchAll(/(\d+) 0 R/gu)].map(match => Number(match[1]))
  return numbers.flatMap(number => [number, ...below(objects, number)])
}
