import { isCollection, isScalar, visit } from 'yaml'
import type { Node, YAMLError } from 'yaml'
import { sortedBy } from '../../base/collections.ts'
import type { ParsedYaml } from './parse.ts'

/** What is wrong with the writing, in the terms the words are found by. */
export type YamlKind =
  | 'alias'
  | 'bracket-open'
  | 'colon-in-text'
  | 'colon-missing'
  | 'comma-extra'
  | 'comma-missing'
  | 'curly-quotes'
  | 'document-end'
  | 'escape'
  | 'indent'
  | 'list-inline'
  | 'merge'
  | 'odd-space'
  | 'question-mark'
  | 'quote-open'
  | 'reserved-character'
  | 'space-after-colon'
  | 'table'
  | 'tag'
  | 'text-after-quote'
  | 'too-deep'
  | 'other'

export interface YamlProblem {
  readonly kind: YamlKind | 'duplicate-key' | 'tab'
  readonly offset: number
  readonly length: number
  /** What the parser said; shown only where no words of ours fit. */
  readonly parser: string
  /** Whether the rest of the tree can still be trusted. */
  readonly sound: boolean
}

type YamlFailure = Pick<YAMLError, 'code' | 'message' | 'pos'>

/** More are not read at once, and a text full of brackets makes one for each. */
const MOST_PROBLEMS = 100

/** One problem a line at most: the parser stumbles on after the first, and what it says then misleads. */
export function yamlProblems(text: string, { root, errors }: ParsedYaml): YamlProblem[] {
  const first = onePerLine(text, errors, error => error.pos[0]).slice(0, MOST_PROBLEMS)
  const problems = [
    ...withoutWhatFollows(
      withoutSameRecord(
        root,
        first.map(error => problemOf(text, root, error))
      )
    ),
    ...aliases(root)
  ]
  return onePerLine(text, problems, problem => problem.offset).slice(0, MOST_PROBLEMS)
}

/** Kinds after which the lines below seem askew that stand well. */
const DISTURBING: readonly YamlProblem['kind'][] = ['bracket-open', 'indent', 'odd-space', 'tab']

/** A quote that is not closed swallows what follows it; what is askew makes its neighbors look askew. Only the first is told. */
function withoutWhatFollows(problems: readonly YamlProblem[]): YamlProblem[] {
  const quote = problems.findIndex(one => one.kind === 'quote-open')
  const told = quote < 0 ? problems : [...problems.slice(0, quote).filter(isBefore(problems[quote])), problems[quote]]
  const disturbing = told.findIndex(one => one && DISTURBING.includes(one.kind))
  return told.flatMap((one, index) => (one && (one.kind !== 'indent' || index <= disturbing) ? [one] : []))
}

/** Two records without a dash between them have all their keys in common: the second name, "id", tells it. */
function withoutSameRecord(root: Node | null, problems: readonly YamlProblem[]): YamlProblem[] {
  const twice = problems.filter(one => one.kind === 'duplicate-key')
  if (twice.length < 2) return [...problems]
  const follow = new Set<YamlProblem>()
  visit(root, {
    Map: (_, map) => {
      const own = map.items.flatMap(({ key }) => (isScalar(key) ? [{ name: key.value, at: key.range?.[0] }] : []))
      const here = twice.filter(one => own.some(({ at }) => at === one.offset))
      const named = here.some(one => own.some(({ name, at }) => at === one.offset && name === 'id'))
      for (const one of named ? here : [])
        if (own.some(({ name, at }) => at === one.offset && name !== 'id')) follow.add(one)
    }
  })
  return problems.filter(one => !follow.has(one))
}

const isBefore =
  (quote: YamlProblem | undefined) =>
  (one: YamlProblem): boolean =>
    one.offset < (quote?.offset ?? 0) && one.kind !== 'bracket-open'

function onePerLine<T>(text: string, items: readonly T[], offset: (item: T) => number): T[] {
  const seen = new Set<number>()
  return sortedBy(items, offset).filter(item => {
    const line = text.lastIndexOf('\n', offset(item) - 1)
    if (seen.has(line)) return false
    seen.add(line)
    return true
  })
}

/** Spaces of another kind than the one of the keyboard, at the start of a line or after a colon. */
const ODD_SPACE = /^[ \t]*[^\S \t\r\n]|:[^\S \t\r\n]/u

function problemOf(text: string, root: Node | null, error: YamlFailure): YamlProblem {
  const [start, end] = error.pos
  const kind = kindOf(text, error)
  const line = kind === 'indent' || kind === 'other' ? lineAround(text, start) : ''
  const lineStart = text.lastIndexOf('\n', start - 1) + 1
  const tab = /^ *\t/u.exec(line)
  const odd = tab ?? ODD_SPACE.exec(line)
  const known = knownSlip(lineAround(text, start), kind)
  if (known)
    return { kind: known, offset: start, length: Math.max(1, end - start), parser: error.message, sound: false }
  if (odd) {
    const offset = lineStart + odd.index + odd[0].length - 1
    return { kind: tab ? 'tab' : 'odd-space', offset, length: 1, parser: error.message, sound: false }
  }
  const opened = kind === 'quote-open' || kind === 'bracket-open' ? openedAt(root, start) : undefined
  const offset = opened ?? start
  return {
    kind,
    offset,
    length: opened === undefined ? Math.max(1, end - start) : 1,
    parser: error.message,
    sound: kind === 'duplicate-key' || kind === 'tag'
  }
}

/** A value in the quotes of a word processor, a question mark for what nobody knows yet, a table that was pasted. */
function knownSlip(line: string, kind: YamlProblem['kind']): YamlKind | undefined {
  if (/^\s*\|.*\|\s*$|\S\t+\S.*\t+\S/u.test(line) && kind === 'colon-missing') return 'table'
  if (/[:,[{]\s+\?\s*(?:$|[,}\]])/u.test(line)) return 'question-mark'
  return /[:,[{]\s*[“”„«‘’]/u.test(line) && !['duplicate-key', 'tab'].includes(kind) ? 'curly-quotes' : undefined
}

function kindOf(text: string, { code, message, pos }: YamlFailure): YamlProblem['kind'] {
  const line = lineAround(text, pos[0])
  switch (code) {
    case 'DUPLICATE_KEY':
      return 'duplicate-key'
    case 'TAB_AS_INDENT':
      return 'tab'
    case 'TAG_RESOLVE_FAILED':
    case 'MULTIPLE_TAGS':
    case 'BAD_COLLECTION_TYPE':
      return 'tag'
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
      return 'alias'
    case 'BLOCK_IN_FLOW':
      return 'comma-missing'
    case 'BAD_SCALAR_START':
      return 'reserved-character'
    case 'BAD_DQ_ESCAPE':
      return 'escape'
    case 'RESOURCE_EXHAUSTION':
      return 'too-deep'
    case 'MULTIPLE_DOCS':
    case 'BAD_DIRECTIVE':
      return 'document-end'
    case 'BLOCK_AS_IMPLICIT_KEY':
      return /^[^:]*:\s.*:\s/u.test(line) ? 'colon-in-text' : keyLine(line)
    case 'MULTILINE_IMPLICIT_KEY':
      return keyLine(line)
    default:
      return kindByMessage(message, line)
  }
}

function kindByMessage(message: string, line: string): YamlKind {
  if (message.includes('closing')) return 'quote-open'
  if (/^Flow (?:sequence|map).*end with|^Expected flow .* to end/u.test(message)) return 'bracket-open'
  if (message.startsWith('Missing , ')) return 'comma-missing'
  if (/^Unexpected (?:,|empty item)/u.test(message)) return 'comma-extra'
  if (message.startsWith('Missing space after :')) return 'space-after-colon'
  if (message.startsWith('Implicit map keys need')) return keyLine(line)
  if (message.includes('block-seq-ind')) return 'list-inline'
  if (/^Unexpected (?:scalar|double|single).* at node end/u.test(message)) return 'text-after-quote'
  if (/same column|without - indicator|indent/u.test(message)) return 'indent'
  if (message.includes('directives-end')) return 'document-end'
  return 'other'
}

/** What is wrong with a line that should be a key and its value. */
function keyLine(line: string): YamlKind {
  if (/^\s*(?:- )?[\w-]+:\S/u.test(line)) return 'space-after-colon'
  return line.includes(':') ? 'indent' : 'colon-missing'
}

/** The start of the innermost quoted text or bracket that is still open at the offset. */
function openedAt(root: Node | null, offset: number): number | undefined {
  let opened: number | undefined
  visit(root, {
    Node: (_, node) => {
      const [start, end] = node.range ?? [offset + 1, 0]
      const quoted = isScalar(node) && (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE')
      if ((quoted || (isCollection(node) && node.flow === true)) && start < offset && end >= offset) opened = start
    }
  })
  return opened
}

function aliases(root: Node | null): YamlProblem[] {
  const problems: YamlProblem[] = []
  visit(root, {
    Alias: (_, node) => {
      const [start = 0, end = 0] = node.range ?? []
      problems.push({ kind: 'alias', offset: start, length: Math.max(1, end - start), parser: '', sound: false })
    }
  })
  return problems
}

function lineAround(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1
  const end = text.indexOf('\n', offset)
  return text.slice(start, end < 0 ? text.length : end)
}
