import { KEYS_OF } from './schema/record.ts'

/** A slip as it was found in a pasted text. */
export interface FoundSlip {
  /** From fence to fence, one line for each line that was written, as a visit file. */
  readonly text: string
  /** For each line of `text`, the line of the pasted text on which it began; both count from 1. */
  readonly lines: readonly number[]
  /** What the page wrote into the slip's first line. */
  readonly from?: { readonly site: string; readonly box: string; readonly tag: string }
  /** Lines of the pasted text that do not belong to the slip and are not blank. */
  readonly outside: number
}

interface Line {
  readonly text: string
  readonly line: number
}

/**
 * The first slip in a pasted text: a mail's greeting and signature are left aside, the marks of a quoted answer are taken off, and lines that
 * a mail program broke are joined. Undefined where there is no line of three dashes followed by another.
 */
export function slipIn(pasted: string): FoundSlip | undefined {
  const all = pasted
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\r|\n/u)
    .map<Line>((text, index) => ({ text: unquoted(text), line: index + 1 }))
  const start = all.findIndex(isFence)
  const end = start < 0 ? -1 : all.findIndex((one, index) => index > start && isFence(one))
  if (end < 0) return undefined
  const lines = joined(all.slice(start, end + 1))
  const header = lines.find(one => one.text.startsWith('#'))
  const from = header && /^# (.*) · (.*) · ([0-9A-Z]+)\s*$/u.exec(header.text)
  return {
    text: `${lines.map(one => one.text).join('\n')}\n`,
    lines: lines.map(one => one.line),
    ...(from ? { from: { site: from[1] ?? '', box: from[2] ?? '', tag: from[3] ?? '' } } : {}),
    outside: [...all.slice(0, start), ...all.slice(end + 1)].filter(one => one.text.trim() !== '').length
  }
}

const isFence = ({ text }: Line): boolean => text.trim() === '---'

/** "> > on: 2026-05-04" is "on: 2026-05-04"; spaces that do not break stand for the spaces they were. */
function unquoted(text: string): string {
  return text
    .replace(/^(?:>\s?)+/u, '')
    .replace(/^[\s\u00a0]+/u, spaces => ' '.repeat(spaces.length))
    .trimEnd()
}

function joined(lines: readonly Line[]): Line[] {
  const done: Line[] = []
  for (const line of lines) {
    const before = done.at(-1)
    if (before && isRest(line.text) && isUnfinished(before.text))
      done[done.length - 1] = { ...before, text: `${before.text} ${line.text.trim()}` }
    else done.push(line)
  }
  return done
}

/** A line that begins nothing of its own: no fence, comment, entry of a list, or key of a visit. */
function isRest(text: string): boolean {
  const bare = text.trimStart()
  if (bare === '' || bare === '---' || bare.startsWith('#') || bare.startsWith('- ')) return false
  const key = /^([a-z-]+):/u.exec(text)?.[1]
  return key === undefined || !(KEYS_OF.get('a visit') ?? []).includes(key)
}

/** A bracket or a quotation mark is still open, or the comment of the first line has no tag yet. */
function isUnfinished(text: string): boolean {
  if (text.startsWith('#')) return !/· [0-9A-Z]{7}$/u.test(text)
  const bare = text.replace(/\\./gu, '').replace(/"[^"]*"/gu, '')
  const count = (of: string) => bare.split(of).length - 1
  return bare.includes('"') || count('{') > count('}') || count('[') > count(']')
}

/** What the form of a box page writes, and what `record` adds to it. */
const OF_THE_FORM =
  'on by reason arrived left boxes programs batteries readings found done repaired parts photos open owner drawing-change'.split(
    ' '
  )

/** Keys of a visit that no form asks for: a slip that holds them was not written by one alone. */
export function notOfTheForm(keys: readonly string[]): string[] {
  return keys.filter(key => !OF_THE_FORM.includes(key))
}
