import { stopwatch } from '../build/clock.ts'
import { harmless } from '../report/harmless.ts'
import { COLORED, PLAIN } from '../report/paint.ts'
import type { Paint } from '../report/paint.ts'

/** The one door to standard output and standard error. */
export interface Output {
  readonly say: (text: string) => void
  /** A file for another program, byte by byte. */
  readonly pass: (text: string) => void
  /** Progress and asides; silent with --quiet. */
  readonly aside: (text: string) => void
  readonly complain: (text: string) => void
  /** "Sites: 120 of 1,000", in one line that is written over; only where a person watches a terminal, and not with --quiet. */
  readonly progress: (what: string, done: number, of: number) => void
  readonly paint: Paint
}

export function makeOutput(options: { readonly quiet?: boolean; readonly color?: string }): Output {
  const colored =
    options.color === 'always' ||
    (options.color !== 'never' && process.stdout.isTTY === true && process.env['NO_COLOR'] === undefined)
  const shown = (text: string): string => (colored ? harmlessButColors(text) : harmless(text))
  return {
    // Plain spaces: what is printed is searched and piped.
    say: text => void process.stdout.write(`${shown(text.replaceAll('\u00a0', ' '))}\n`),
    pass: text => void process.stdout.write(text),
    aside: text => {
      if (!options.quiet) process.stderr.write(`${shown(text)}\n`)
    },
    progress: options.quiet || process.stderr.isTTY !== true ? () => undefined : progressLine(),
    complain: text => void process.stderr.write(`${shown(text)}\n`),
    paint: colored ? COLORED : PLAIN
  }
}

/** The few codes of our own colors; what else commands a terminal came from a file. */
const COLORS = new RegExp(`(${'\u001b'}\\[(?:1|2|22|31|33|36|39)m)`, 'u')

function harmlessButColors(text: string): string {
  return text
    .split(COLORS)
    .map((part, index) => (index % 2 === 1 ? part : harmless(part)))
    .join('')
}

/** Not more often than an eye can follow; the line is gone once all is done. */
function progressLine(): Output['progress'] {
  const elapsed = stopwatch()
  let last = 0
  return (what, done, of) => {
    const isEnd = done >= of
    const now = elapsed()
    if (!isEnd && now - last < 100) return
    last = now
    process.stderr.write(isEnd ? '\r\u001b[K' : `\r\u001b[K${what}: ${done} of ${of}`)
  }
}

/** Exit codes of the contract. */
export const EXIT = { done: 0, found: 1, refused: 2, ours: 3 } as const
