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
  readonly paint: Paint
}

export function makeOutput(options: { readonly quiet?: boolean; readonly color?: string }): Output {
  const colored =
    options.color === 'always' ||
    (options.color !== 'never' && process.stdout.isTTY === true && process.env['NO_COLOR'] === undefined)
  return {
    // Plain spaces: what is printed is searched and piped.
    say: text => void process.stdout.write(`${text.replaceAll('\u00a0', ' ')}\n`),
    pass: text => void process.stdout.write(text),
    aside: text => {
      if (!options.quiet) process.stderr.write(`${text}\n`)
    },
    complain: text => void process.stderr.write(`${text}\n`),
    paint: colored ? COLORED : PLAIN
  }
}

/** Exit codes of the contract. */
export const EXIT = { done: 0, found: 1, refused: 2, ours: 3 } as const
