import matter from 'gray-matter'
import type { Node } from 'yaml'
import type { Fault, SourceText } from './loaded.ts'
import { fatalFault, mildFault } from './faults/fault.ts'
import { fenceProblem, mergeMarks, moreKeysAt } from './fences.ts'
import { linesOf, placeAt, placeOfLine } from './lines.ts'
import type { Lines } from './lines.ts'
import { parseYaml } from './yaml/parse.ts'
import type { ParsedYaml } from './yaml/parse.ts'
import { plainValue } from './yaml/plain.ts'
import { yamlFaults } from './yaml/faults.ts'

/** A file as read: its keys as plain values, the nodes that know their places, and the prose below. */
export interface FrontMatter {
  readonly lines: Lines
  /** A map of keys; empty where `sound` is false. */
  readonly data: Readonly<Record<string, unknown>>
  readonly root: Node | null
  /** Where the nodes' offsets start in the text. */
  readonly base: number
  readonly body: string
  /** Line of the file on which the body starts. */
  readonly bodyLine: number
  readonly faults: readonly Fault[]
  /** False where the keys cannot be trusted; nothing is read from them then. */
  readonly sound: boolean
}

/** 64 KB of keys: sixty stations take a third of it. A larger file is refused before it is parsed. */
export const MOST_BYTES = 64 * 1024
/** A hundred pages of print. */
export const MOST_PROSE_BYTES = 256 * 1024
const FENCE = '---'

/** Reads a Markdown file with YAML on top. Never throws: whatever is wrong comes back as faults, all of them at once. */
export function readFrontMatter(source: SourceText): FrontMatter {
  const lines = linesOf(source)
  if (source.trouble)
    return unsound(lines, [
      fatalFault('file/front-matter', '', placeOfLine(lines, 1), { kind: 'unreadable', trouble: source.trouble })
    ])
  const marks = mergeMarks(lines.text)
  if (marks[0]) {
    const place = placeOfLine(lines, marks[0])
    return unsound(lines, [fatalFault('file/yaml', '', place, { kind: 'merge', lines: marks.map(String) })])
  }
  const problem = fenceProblem(lines.text)
  if (problem) {
    const whole = placeOfLine(lines, problem.line)
    // Its one line is the whole file, which no message can show.
    const place = problem.kind === 'line-ends' ? { ...whole, length: FENCE.length, text: FENCE } : whole
    return unsound(lines, [fatalFault('file/front-matter', '', place, { kind: problem.kind })])
  }
  const { keys, base, body } = split(lines.text)
  const parts = [
    { part: 'keys', text: keys, most: MOST_BYTES },
    { part: 'prose', text: body, most: MOST_PROSE_BYTES }
  ]
  for (const { part, text, most } of parts) {
    const bytes = new TextEncoder().encode(text).length
    if (bytes > most)
      return unsound(lines, [fatalFault('file/too-large', '', placeOfLine(lines, 1), { part, bytes, most })])
  }
  return understood(lines, keys, base, body)
}

/**
 * The split is gray-matter's. It is always called with options, and every engine but ours throws: its own YAML turns 22:30 into a number
 * and 2025-02-30 into 2 March, and its JavaScript engine runs what it reads.
 */
function split(text: string): { readonly keys: string; readonly base: number; readonly body: string } {
  // Blank lines cost it the square of their number, so it is shown as many letters without any.
  const end = Math.max(0, text.indexOf(`\n${FENCE}`, FENCE.length))
  const blank = text.slice(0, end).replace(/\r?\n(?=[^\S\n]*\n)/gu, ends => ' '.repeat(ends.length))
  const shown = blank + text.slice(end)
  let keys = ''
  const keep = (yaml: string) => {
    // The line end before the closing dashes is not part of what is handed over; half of a Windows one would be.
    keys = `${text.slice(FENCE.length, FENCE.length + yaml.length)}\n`
    return {}
  }
  const file = matter(shown, {
    language: 'yaml',
    engines: { yaml: keep, json: refuse, javascript: refuse, js: refuse }
  })
  return { keys, base: FENCE.length, body: text.slice(text.length - file.content.length) }
}

function refuse(): never {
  throw new Error('only YAML is read')
}

function understood(lines: Lines, keys: string, base: number, body: string): FrontMatter {
  const parsed: ParsedYaml = parseYaml(keys)
  const { faults, sound } = yamlFaults(keys, parsed, (offset, length) => placeAt(lines, base + offset, length))
  const data = sound ? plainValue(parsed.root) : {}
  if (data !== null && (typeof data !== 'object' || Array.isArray(data)))
    return unsound(lines, [...faults, fatalFault('file/front-matter', '', placeOfLine(lines, 2), { kind: 'no-keys' })])
  const bodyLine = lines.text.slice(0, lines.text.length - body.length).split('\n').length
  const more = moreKeysAt(body)
  return {
    lines,
    data: (data ?? {}) as Record<string, unknown>,
    root: parsed.root,
    base,
    body,
    bodyLine,
    faults:
      more === undefined
        ? faults
        : [...faults, mildFault('file/front-matter', '', placeOfLine(lines, bodyLine + more), { kind: 'more-keys' })],
    sound
  }
}

function unsound(lines: Lines, faults: readonly Fault[]): FrontMatter {
  return { lines, data: {}, root: null, base: 0, body: '', bodyLine: 1, faults, sound: false }
}
