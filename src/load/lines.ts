import type { Place } from '../diagnostics/finding.ts'
import type { SourceText } from './loaded.ts'

/** A text and where its lines begin, for turning offsets into places. The text has no byte order mark. */
export interface Lines {
  readonly file: string
  readonly text: string
  readonly starts: readonly number[]
}

export function linesOf({ file, text }: SourceText): Lines {
  const bare = text.replace(/^\uFEFF/u, '')
  const starts = [0]
  for (let at = bare.indexOf('\n'); at >= 0; at = bare.indexOf('\n', at + 1)) starts.push(at + 1)
  return { file, text: bare, starts }
}

/** The same of a table or a drawing, whose lines may end in carriage returns alone, as old programs write them. Offsets stay as they are. */
export function linesOfData({ file, text }: SourceText): Lines {
  return linesOf({ file, text: text.replace(/\r(?!\n)/gu, '\n') })
}

/** The place of a stretch of text. It ends with its line at the latest, so that a mark under it never runs on. */
export function placeAt(lines: Lines, offset: number, length: number): Place {
  const index = lineIndex(lines.starts, offset)
  const start = lines.starts[index] ?? 0
  const text = lineText(lines, index)
  const column = Math.min(offset - start, text.length)
  return {
    file: lines.file,
    line: index + 1,
    column: column + 1,
    length: Math.max(0, Math.min(length, text.length - column)),
    text
  }
}

/** Lines count from 1. The whole line, without the spaces in front. */
export function placeOfLine(lines: Lines, line: number): Place {
  const index = Math.min(Math.max(line, 1), lines.starts.length) - 1
  const text = lineText(lines, index)
  const indent = text.length - text.trimStart().length
  return placeAt(lines, (lines.starts[index] ?? 0) + indent, text.length)
}

function lineText({ text, starts }: Lines, index: number): string {
  return text.slice(starts[index] ?? 0, starts[index + 1] ?? text.length).replace(/\r?\n$|\r$/u, '')
}

/** The last line that starts at or before the offset. */
function lineIndex(starts: readonly number[], offset: number): number {
  let [low, high] = [0, starts.length - 1]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return low
}
