import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** The file that says that an output folder is ours, what is in it, and what its prints were made from. */
export const MARKER = '.underlid'

/** How a print came about: reused while it would come about the same way again. */
export interface PrintRecord {
  /** Hash over the document and all that shapes its print. */
  readonly key: string
  /** Hash of each file that the document showed, by path below the output folder. */
  readonly uses: Readonly<Record<string, string>>
  /** Hash of the print itself. */
  readonly pdf: string
}

export interface Marker {
  /** Paths of the outputs, sorted. Other files in the folder are somebody's own. */
  readonly files: readonly string[]
  readonly prints: Readonly<Record<string, PrintRecord>>
}

const ABOUT =
  'Made by Underlid, which writes this folder anew with each build. Files of your own in it are left in place.'

/** Undefined where the folder carries no marker. A marker that cannot be read still marks the folder as ours. */
export function readMarker(folder: string): Marker | undefined {
  const text = readIfThere(join(folder, MARKER))
  if (text === undefined) return undefined
  try {
    const { files, prints } = JSON.parse(text) as Partial<Marker>
    return { files: Array.isArray(files) ? files : [], prints: prints ?? {} }
  } catch {
    return { files: [], prints: {} }
  }
}

export function writeMarker(folder: string, { files, prints }: Marker): void {
  const sorted = Object.fromEntries(Object.entries(prints).sort(([a], [b]) => (a < b ? -1 : 1)))
  const marker = { about: ABOUT, files: [...files].sort(), prints: sorted }
  writeFileSync(join(folder, MARKER), `${JSON.stringify(marker, undefined, 1)}\n`)
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw error
  }
}
