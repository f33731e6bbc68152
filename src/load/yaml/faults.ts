import type { Place } from '../../diagnostics/finding.ts'
import type { Fault } from '../loaded.ts'
import { fatalFault } from '../faults/fault.ts'
import type { Details } from '../faults/fault.ts'
import type { ParsedYaml } from './parse.ts'
import { yamlProblems } from './problem.ts'
import type { YamlProblem } from './problem.ts'

type PlaceOf = (offset: number, length: number) => Place

/** The faults of the writing itself. `sound` is false where what follows cannot be trusted. */
export function yamlFaults(
  text: string,
  parsed: ParsedYaml,
  place: PlaceOf
): { readonly faults: readonly Fault[]; readonly sound: boolean } {
  const problems = yamlProblems(text, parsed)
  const tabs = problems.filter(problem => problem.kind === 'tab')
  const others = problems.filter(problem => problem.kind !== 'tab')
  const faults = [
    ...(tabs[0] ? [fatalFault('file/tab', '', place(tabs[0].offset, 1), { lines: tabs.length })] : []),
    ...others.map(problem => yamlFault(text, problem, place))
  ]
  return { faults, sound: problems.every(problem => problem.sound) }
}

function yamlFault(text: string, problem: YamlProblem, place: PlaceOf): Fault {
  const { kind, offset, length, parser } = problem
  const where = marked(kind, place(offset, length))
  const word = /^[^\s:,[\]{}]*/u.exec(text.slice(offset))?.[0] ?? ''
  if (kind === 'duplicate-key') {
    return fatalFault('file/duplicate-key', '', place(offset, Math.max(1, word.length)), { key: word })
  }
  const corrected = correctedLine(kind, where.text)
  const details: Details = {
    kind,
    parser,
    found: text.slice(offset, offset + Math.min(length, 40)),
    ...(corrected ? { corrected } : {})
  }
  return fatalFault('file/yaml', '', where, details)
}

const WHOLE_LINE: readonly YamlProblem['kind'][] = [
  'colon-missing',
  'curly-quotes',
  'indent',
  'list-inline',
  'question-mark',
  'space-after-colon',
  'table'
]

/** Of a line that is wrong as a whole, the whole; of a value that needs quotes, all of it. */
function marked(kind: YamlProblem['kind'], where: Place): Place {
  const { text, column } = where
  const wholeLine = WHOLE_LINE.includes(kind)
  const start = wholeLine ? text.length - text.trimStart().length + 1 : column
  const toEnd = wholeLine || kind === 'colon-in-text' || kind === 'reserved-character'
  return toEnd ? { ...where, column: start, length: Math.max(0, text.trimEnd().length - start + 1) } : where
}

/** "1: 20 min, 2: 20 min": entries whose brackets are missing. */
const STATIONS_OR_MONTHS = /^(?:\d+|[A-Z][a-z]{2}): [^:,{}[\]]+(?:, (?:\d+|[A-Z][a-z]{2}): [^:,{}[\]]+)*$/u

/** The writer's own line, put right, where one can be told. */
function correctedLine(kind: YamlProblem['kind'], line: string): string | undefined {
  const pair = /^\s*(?:- )?([\w-]+):\s*(.*?)\s*$/u.exec(line)
  const [key, value] = [pair?.[1], pair?.[2] ?? '']
  if (key === undefined || value === '') return undefined
  if (kind === 'colon-in-text' && STATIONS_OR_MONTHS.test(value)) return `${key}: { ${value} }`
  if (kind === 'space-after-colon') return `${key}: ${value}`
  if (kind === 'list-inline') return `${key}: [${value.replace(/^-\s*/u, '')}]`
  if (kind === 'text-after-quote') return `${key}: "${value.replaceAll(/["']/gu, '')}"`
  const quotable = kind === 'colon-in-text' || kind === 'reserved-character'
  return quotable ? `${key}: "${value.replaceAll('"', "'")}"` : undefined
}
