import type { SourceText } from './loaded.ts'

const KEY = /["']?private["']?\s*:/gu
const PERSONAL = /\b(?:phone|email)\s*:\s*("[^"]*"|'[^']*'|[^,}\]]+)/gu

/**
 * What a file that cannot be understood may hold in private: each line at a `private:` key and below it, by its indent, and phones and mail
 * addresses that no line calls public. Too much rather than too little: it is only kept out of messages. The time it takes grows as the text
 * does, whatever stands in it.
 */
export function roughPrivateWords({ text }: Pick<SourceText, 'text'>): string[] {
  const words = new Set<string>()
  const keep = (found: readonly string[]): void => found.forEach(word => words.add(word))
  let indent: number | undefined
  for (const line of text.split(/\r\n|\r|\n/u)) {
    const own = line.length - line.trimStart().length
    if (indent !== undefined && line.trim() !== '' && own <= indent) indent = undefined
    if (indent !== undefined) keep(valuesOf(line))
    const key = indent === undefined ? privateKey(line) : undefined
    if (key) {
      indent = key.indent
      keep(valuesOf(key.rest))
    }
    if (!/\bpublic\s*:\s*(?:yes|true)/iu.test(line))
      keep([...line.matchAll(PERSONAL)].map(([, value = '']) => bare(value)))
  }
  words.delete('')
  return [...words]
}

/** The first key of that name on a line: where the line starts, in a list, or in braces. */
function privateKey(line: string): { readonly indent: number; readonly rest: string } | undefined {
  for (const { index, 0: key } of line.matchAll(KEY)) {
    const before = line.slice(0, index)
    const start = startOf(before)
    if (start < before.length && !'{,'.includes(before.trimEnd().at(-1) ?? ' ')) continue
    return { indent: start, rest: line.slice(index + key.length) }
  }
  return undefined
}

/** Letters that a line begins with before its first word: its indent and the dashes of lists. */
function startOf(line: string): number {
  let at = line.length - line.trimStart().length
  while (/^[-?]\s/u.test(line.slice(at, at + 2))) at += line.length - at - line.slice(at + 1).trimStart().length
  return at
}

/** "  gate: { code: "0391", keys: hook 4 }": the values, and what stands there as a whole. */
function valuesOf(line: string): string[] {
  const value = afterKey(line.slice(startOf(line)))
  const parts = value.split(/[{}[\],]/u).flatMap(part => {
    const pieces = part.split(/:\s/u)
    return pieces.map((piece, index) => (index < pieces.length - 1 ? withoutLastWord(piece) : piece))
  })
  return [value, ...parts].map(bare)
}

function afterKey(text: string): string {
  const end = /:(?:\s|$)/u.exec(text)?.index ?? -1
  return end >= 0 && /^["']?[\w -]+["']?$/u.test(text.slice(0, end).trimEnd()) ? text.slice(end + 1) : text
}

const withoutLastWord = (text: string): string => withoutEnd(text.trimEnd(), /[\w-]/u)

/** Without the signs that YAML puts around a text. */
const bare = (text: string): string => withoutEnd(text.trim().replace(/^[\s"'|>@*&!-]+/u, ''), /["'\s]/u)

function withoutEnd(text: string, signs: RegExp): string {
  let end = text.length
  while (end > 0 && signs.test(text[end - 1] ?? '')) end -= 1
  return text.slice(0, end)
}
