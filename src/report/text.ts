import type { Finding, Place } from '../diagnostics/finding.ts'
import { countFindings } from '../diagnostics/finding.ts'
import { groupBy } from '../base/collections.ts'
import { blotted } from './harmless.ts'
import type { Paint } from './paint.ts'
import { sourceText } from './source-text.ts'

/** More than this many of one code in one site are folded after the first ones. */
const FOLD_ABOVE = 4
const SHOWN_OF_FOLDED = 2
const WIDTH = 104

/** Findings as a person reads them in a terminal: the place first, so that an editor jumps to it. */
export function findingsText(findings: readonly Finding[], paint: Paint): string {
  const groups = groupBy(findings, one => `${one.site} ${one.code}`)
  const shown = new Map<string, number>()
  const blocks: string[] = []
  for (const finding of findings) {
    const key = `${finding.site} ${finding.code}`
    const all = groups.get(key)?.length ?? 0
    const count = (shown.get(key) ?? 0) + 1
    shown.set(key, count)
    if (all > FOLD_ABOVE && count > SHOWN_OF_FOLDED + 1) continue
    if (all > FOLD_ABOVE && count === SHOWN_OF_FOLDED + 1) {
      const left = all - SHOWN_OF_FOLDED
      blocks.push(
        `${paint.dim(finding.place.file)}  ${finding.code}\n  and ${left} more in this site: ${named((groups.get(key) ?? []).slice(SHOWN_OF_FOLDED))}`
      )
      continue
    }
    blocks.push(findingText(finding, paint))
  }
  return blocks.join('\n\n')
}

/** What the folded findings are of; where a thing has no name, the line it stands on. */
function named(folded: readonly Finding[]): string {
  return [...new Set(folded.map(one => (one.subject === '' ? `line ${one.place.line}` : one.subject)))].join(', ')
}

export function findingText(finding: Finding, paint: Paint): string {
  const { place, severity, code, message, why, sources, fix, related } = finding
  const lines = [
    `${paint.bold(`${place.file}:${place.line}:${place.column}`)}  ${paint[severity](severity)}  ${code}`,
    ...wrapped(message, '  ', '  '),
    ...excerpt(place, paint),
    ...wrapped(why, '  why   ', '        '),
    ...(sources.length > 0 ? wrapped(sourceText(sources), '        ', '        ').map(paint.dim) : []),
    ...wrapped(fix, '  fix   ', '        '),
    ...related.map(one => `  see   ${one.place.file}:${one.place.line}:${one.place.column}  ${one.note}`)
  ]
  return lines.join('\n')
}

/** One line a finding, for an editor's list of problems: place, severity, message, code. Nothing is folded. */
export function findingsLines(findings: readonly Finding[]): string {
  return findings
    .map(
      ({ place, severity, message, code }) =>
        `${place.file}:${place.line}:${place.column}: ${severity}: ${message} [${code}]`
    )
    .join('\n')
}

/** A row a site: its errors, warnings and notes, and a word where its files could not be read. */
export function sitesTable(
  sites: readonly { readonly id: string; readonly site?: unknown; readonly findings: readonly Finding[] }[]
): string {
  const width = Math.max(4, ...sites.map(one => one.id.length))
  const row = (id: string, ...cells: string[]) =>
    `  ${id.padEnd(width)}  ${cells.map(cell => cell.padStart(10)).join('')}`
  return [
    row('site', 'errors', 'warnings', 'notes'),
    ...sites.map(({ id, site, findings }) => {
      const { error, warning, note } = countFindings(findings)
      return row(id, String(error), String(warning), String(note)) + (site ? '' : '  could not be read')
    })
  ].join('\n')
}

/** "6 errors, 3 warnings, 1 note." */
export function countsText(findings: readonly Finding[]): string {
  const { error, warning, note } = countFindings(findings)
  const part = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`
  return `${part(error, 'error')}, ${part(warning, 'warning')}, ${part(note, 'note')}`
}

/** The line of the file with the value underlined. Long lines are cut round the value. */
function excerpt(place: Place, paint: Paint): string[] {
  if (place.text.trim() === '') return []
  const number = String(place.line).padStart(7)
  const from = Math.max(0, place.column - 1 - 60)
  const cut = blotted(place.text.slice(from, from + 110))
  const text = (from > 0 ? '…' : '') + cut + (place.text.length > from + 110 ? '…' : '')
  const before = place.column - 1 - from + (from > 0 ? 1 : 0)
  const marks = '^'.repeat(Math.max(1, Math.min(place.length, cut.length - (place.column - 1 - from))))
  return [
    `${paint.dim(`${number} |`)} ${text}`,
    `${paint.dim(`${' '.repeat(7)} |`)} ${' '.repeat(Math.max(0, before))}${paint.error(marks)}`
  ]
}

function wrapped(text: string, first: string, rest: string): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > WIDTH - rest.length) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  lines.push(line)
  return lines.map((one, index) => (index === 0 ? first : rest) + one)
}
