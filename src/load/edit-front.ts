import { isCollection, isMap, isPair, isScalar, isSeq, parseDocument, stringify } from 'yaml'
import type { Node, Pair, YAMLMap, YAMLSeq } from 'yaml'

type Path = readonly (string | number)[]

/**
 * The text of a file with one value set in its front matter, everything else as it was: comments, order, line ends, spaces. Undefined where
 * the mapping is not there, or where what stands now runs over several lines and is better changed by hand.
 */
export function setValue(text: string, path: Path, key: string, value: unknown): string | undefined {
  const front = frontOf(text)
  const map = front && nodeAt(front.text, path)
  if (!front || !isMap(map)) return undefined
  const written = flow(value)
  const pair = map.items.find(one => isScalar(one.key) && String(one.key.value) === key)
  if (pair) return replaced(text, front.start, pair, written)
  const last = map.items.at(-1)
  const first = map.items[0]
  if (!last || !first || !isScalar(first.key) || !first.key.range) return undefined
  const end = front.start + leafEnd(last)
  if (map.flow) return `${text.slice(0, end)}, ${key}: ${written}${text.slice(end)}`
  const indent = columnOf(text, front.start + first.key.range[0])
  return withLine(text, end, `${' '.repeat(indent)}${key}: ${written}`)
}

/** The same with a record more at the end of a list at the top; the list is begun where there is none. */
export function appendRecord(
  text: string,
  list: string,
  record: Readonly<Record<string, unknown>>
): string | undefined {
  const front = frontOf(text)
  const top = front && nodeAt(front.text, [])
  if (!front || !isMap(top)) return undefined
  const pair = top.items.find(one => isScalar(one.key) && one.key.value === list)
  if (!pair) return withLine(text, front.start + leafEnd(top.items.at(-1) ?? top), `${list}:\n  - ${flow(record)}`)
  const seq = pair.value as Node | null
  if (isSeq(seq)) return appended(text, front.start, seq, record)
  if (!isScalar(seq) || seq.value !== null || !isScalar(pair.key) || !pair.key.range) return undefined
  return withLine(text, front.start + pair.key.range[1], `  - ${flow(record)}`)
}

function appended(text: string, start: number, seq: YAMLSeq, record: object): string | undefined {
  const last = seq.items.at(-1) as Node | undefined
  if (!last?.range) return replacedRange(text, start, seq, `[${flow(record)}]`)
  const end = start + leafEnd(last)
  if (seq.flow) return `${text.slice(0, end)}, ${flow(record)}${text.slice(end)}`
  const dash = text.lastIndexOf('-', start + last.range[0] - 1)
  const indent = ' '.repeat(columnOf(text, dash))
  if (isMap(last) && last.flow) return withLine(text, end, `${indent}- ${flow(record)}`)
  const lines = Object.entries(record).map(([key, value]) => `${key}: ${flow(value)}`)
  return withLine(text, end, lines.map((line, index) => `${indent}${index === 0 ? '- ' : '  '}${line}`).join('\n'))
}

function replaced(text: string, start: number, pair: Pair, written: string): string | undefined {
  const value = pair.value as Node | null
  if (isCollection(value) && !value.flow) return undefined
  if (isScalar(value) && value.value === null && isScalar(pair.key) && pair.key.range) {
    const colon = text.indexOf(':', start + pair.key.range[1]) + 1
    return `${text.slice(0, colon)} ${written}${text.slice(colon)}`
  }
  return replacedRange(text, start, value, written)
}

function replacedRange(text: string, start: number, node: Node | null, written: string): string | undefined {
  if (!node?.range) return undefined
  const [from, to] = [start + node.range[0], start + node.range[1]]
  return text.slice(from, to).includes('\n') ? undefined : text.slice(0, from) + written + text.slice(to)
}

/** Behind the line on which `offset` lies, with the comment that may stand there, in the line ends of the file. */
function withLine(text: string, offset: number, lines: string): string {
  const newline = text.includes('\r\n') ? '\r\n' : '\n'
  const found = text.indexOf('\n', offset)
  const at = found < 0 ? text.length : text[found - 1] === '\r' ? found - 1 : found
  return `${text.slice(0, at)}${newline}${lines.replaceAll('\n', newline)}${text.slice(at)}`
}

function frontOf(text: string): { readonly start: number; readonly text: string } | undefined {
  const start = /^\ufeff?---[^\n]*\n/u.exec(text)?.[0].length
  if (start === undefined) return undefined
  const end = text.slice(start).search(/^---\s*$/mu)
  return { start, text: end < 0 ? text.slice(start) : text.slice(start, start + end) }
}

function nodeAt(front: string, path: Path): unknown {
  const document = parseDocument(front, { strict: false })
  return path.length === 0 ? document.contents : document.getIn(path, true)
}

/** Where the last thing that is written in a node ends, so that a comment after it stays where it is. */
function leafEnd(node: Node | Pair | YAMLMap): number {
  if (isPair(node)) {
    const value = node.value as Node | null
    const isBlank = value === null || (isScalar(value) && value.value === null && value.source === '')
    return leafEnd(isBlank ? (node.key as Node) : value)
  }
  if (isCollection(node) && !node.flow && node.items.length > 0) return leafEnd(node.items.at(-1) as Node)
  return node.range?.[1] ?? 0
}

function columnOf(text: string, offset: number): number {
  return offset - (text.lastIndexOf('\n', offset - 1) + 1)
}

/** On one line, spaced as people write it; words that YAML would take for something else are quoted. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`
  if (typeof value === 'object' && value !== null)
    return `{ ${Object.entries(value)
      .map(([key, inner]) => `${key}: ${flow(inner)}`)
      .join(', ')} }`
  const text = stringify([value], { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false }).trim()
  return text.slice(1, -1)
}
