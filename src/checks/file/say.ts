import type { Fault } from '../../load/loaded.ts'

/** A word that the one who found the fault left for the one who words it; empty where there is none. */
export function detail(fault: Fault, name: string): string {
  const value = fault.details[name]
  return value === undefined || Array.isArray(value) ? '' : String(value)
}

export function details(fault: Fault, name: string): readonly string[] {
  const value = fault.details[name]
  return Array.isArray(value) ? (value as readonly string[]) : []
}

/** "Z3: ..." where the fault belongs to a thing that has a name. */
export function named(fault: Fault, sentence: string): string {
  return fault.subject === '' ? capital(sentence) : `${fault.subject}: ${sentence}`
}

/** What to write: the writer's own line, put right; the other words where it cannot be told. */
export function fixed(fault: Fault, otherwise: string): string {
  const line = detail(fault, 'corrected')
  return line === '' ? otherwise : writeLine(line)
}

export function writeLine(line: string): string {
  return `Write ${inQuotes(line)}.`
}

/** An example of what to write, not a correction. */
export function suchAs(line: string): string {
  return `Write it in a form such as ${inQuotes(line)}.`
}

/** A line to write, in quotes that it does not hold itself. */
function inQuotes(line: string): string {
  const quote = line.includes('"') ? (line.includes("'") ? '`' : "'") : '"'
  return `${quote}${line}${quote}`
}

/** "A4 and Letter", "us, metric or other". */
export function listed(words: readonly string[], last: 'and' | 'or'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`
}

/** As much of a list as a sentence can bear. */
export function shortList(words: readonly string[], last: 'and' | 'or'): string {
  return words.length > 12 ? `${words.slice(0, 12).join(', ')} and ${words.length - 12} more` : listed(words, last)
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}
