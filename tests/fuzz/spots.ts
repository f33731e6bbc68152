import { isCollection, isMap, isScalar, parseDocument, visit } from 'yaml'

/** A stretch of a text that means something: a value, a key, a list or a map, by offsets into the whole text. */
export interface Spot {
  readonly kind: 'scalar' | 'key' | 'collection'
  readonly start: number
  readonly end: number
}

const known = new Map<string, readonly Spot[]>()

/** The keys and values of a text with front matter. Worked out once a text; a text that is no YAML has none. */
export function spotsOf(text: string): readonly Spot[] {
  const found = known.get(text) ?? findSpots(text)
  if (known.size > 60) known.clear()
  known.set(text, found)
  return found
}

function findSpots(text: string): Spot[] {
  const start = text.indexOf('---')
  const end = text.indexOf('\n---', start + 3)
  if (start < 0 || end < 0) return []
  const base = start + 3
  const document = parseDocument(text.slice(base, end + 1), { logLevel: 'silent' })
  const spots: Spot[] = []
  visit(document, (key, node) => {
    const range = (node as { range?: [number, number] | null } | null)?.range
    if (!range || range[1] <= range[0]) return
    const at = { start: base + range[0], end: base + range[1] }
    if (isScalar(node)) spots.push({ kind: key === 'key' ? 'key' : 'scalar', ...at })
    else if (isCollection(node) && (isMap(node) || node.items.length > 0)) spots.push({ kind: 'collection', ...at })
  })
  return spots
}

export const replaced = (text: string, { start, end }: Pick<Spot, 'start' | 'end'>, by: string): string =>
  text.slice(0, start) + by + text.slice(end)
