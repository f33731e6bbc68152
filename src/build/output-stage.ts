import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { diskTrouble } from './disk-trouble.ts'
import { filesBelow, isFile, linkOrCopy, removeQuietly, sameBytes } from './output-files.ts'
import { outputPlace, placeOutput } from './place-output.ts'
import { nextFolder, ownedFolder } from './output-folder.ts'
import { MARKER, readMarker, writeMarker } from './output-marker.ts'
import type { Marker, PrintRecord } from './output-marker.ts'
import { swapIn } from './output-swap.ts'

export interface OutputFile {
  /** Below the output folder, with forward slashes. */
  readonly path: string
  readonly content: string | Uint8Array
}

/** What a build did to the output folder. */
export interface OutputReport {
  readonly changed: readonly string[]
  readonly unchanged: readonly string[]
  readonly kept: readonly string[]
  readonly removed: readonly string[]
}

/** The new output while it is put together, beside the old one. */
export interface Stage {
  readonly folder: string
  readonly last: Marker
  /**
   * A file whose bytes are those of the last output is carried over as it is, its date included. The same file twice is written once;
   * two files on one path are a fault of ours.
   */
  readonly write: (file: OutputFile) => void
  /** Carries over what the last output holds and this one does not write. `*` stands for any text: "office/quay-street/*". */
  readonly keep: (patterns: readonly string[]) => void
  /** Carries over one file of the last output; false where it is not there. */
  readonly carry: (path: string) => boolean
  /** Tells of a file that was put in place by another process. */
  readonly note: (path: string, fate: 'changed' | 'unchanged') => void
  /** Carries over a file that is known to be what this build would write. */
  readonly repeat: (path: string) => void
  /** Path in the last output. */
  readonly lastPath: (path: string) => string
  readonly recordPrint: (pdf: string, record: PrintRecord) => void
}

/**
 * Lends a stage to `work`; when that is through, the stage takes the place of the last output in one move. Where `work` or a write
 * fails, the last output stays as it was.
 */
export async function withStage<T>(
  out: string,
  work: (stage: Stage) => T | Promise<T>
): Promise<{ result: T; report: OutputReport }> {
  const consolation = `The last output in ${out} is as it was.`
  const folder = worded(() => ownedFolder(out), consolation)
  const next = nextFolder(folder)
  try {
    rmSync(next, { recursive: true, force: true })
    mkdirSync(next, { recursive: true })
    const { stage, settle } = openStage(folder, next)
    const result = await work(stage)
    const report = settle()
    swapIn(folder, next)
    return { result, report }
  } catch (error) {
    removeQuietly(next)
    throw diskTrouble(error, consolation)
  }
}

function worded<T>(work: () => T, consolation: string): T {
  try {
    return work()
  } catch (error) {
    throw diskTrouble(error, consolation)
  }
}

/** All of an output at once. */
export async function writeOutputs(
  out: string,
  files: Iterable<OutputFile>,
  keep: readonly string[] = []
): Promise<OutputReport> {
  const { report } = await withStage(out, stage => {
    for (const file of files) stage.write(file)
    stage.keep(keep)
  })
  return report
}

function openStage(folder: string, next: string): { stage: Stage; settle: () => OutputReport } {
  const last = readMarker(folder) ?? { files: [], prints: {} }
  const fates = new Map<string, 'changed' | 'unchanged' | 'kept'>()
  const prints: Record<string, PrintRecord> = {}
  const lastPath = (path: string): string => join(folder, path)
  const place = outputPlace(next)

  const write = ({ path, content }: OutputFile): void => {
    const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content
    const target = place(path)
    const fate = fates.get(path)
    if (fate && fate !== 'kept') {
      if (sameBytes(target, bytes)) return
      throw new Error(`${path} is written twice, with different content.`)
    }
    fates.set(path, placeOutput(lastPath(path), target, bytes))
  }
  const note: Stage['note'] = (path, fate) => void fates.set(path, fate)
  const repeat = (path: string): void => {
    linkOrCopy(lastPath(path), place(path))
    fates.set(path, 'unchanged')
  }
  const carry = (path: string): boolean => {
    if (fates.has(path)) return true
    if (!isFile(lastPath(path))) return false
    linkOrCopy(lastPath(path), place(path))
    fates.set(path, 'kept')
    if (last.prints[path]) prints[path] = last.prints[path]
    return true
  }
  const keep = (patterns: readonly string[]): void => {
    const isWanted = anyOf(patterns)
    for (const path of last.files) if (isWanted(path)) carry(path)
  }
  const settle = (): OutputReport => {
    const files = [...fates.keys()]
    const ours = new Set([MARKER, ...last.files])
    const own = last.files.length === 0 ? [] : filesBelow(folder).filter(path => !ours.has(path))
    for (const path of own) if (!fates.has(path)) linkOrCopy(lastPath(path), place(path))
    writeMarker(next, { files, prints })
    const of = (fate: string): string[] => files.filter(path => fates.get(path) === fate).sort()
    const removed = last.files.filter(path => !fates.has(path)).sort()
    return { changed: of('changed'), unchanged: of('unchanged'), kept: of('kept'), removed }
  }
  const recordPrint = (pdf: string, record: PrintRecord): void => void (prints[pdf] = record)
  return { stage: { folder: next, last, write, keep, carry, note, repeat, lastPath, recordPrint }, settle }
}

/** A fleet has thousands of patterns and of files: a path is looked up whole and by the folders above it. */
function anyOf(patterns: readonly string[]): (path: string) => boolean {
  const whole = new Set(patterns.filter(pattern => !pattern.includes('*')))
  const folders = new Set(patterns.filter(isFolder).map(pattern => pattern.slice(0, -'*'.length)))
  const others = patterns.filter(pattern => pattern.includes('*') && !isFolder(pattern)).map(asExpression)
  return path =>
    whole.has(path) || foldersAbove(path).some(one => folders.has(one)) || others.some(pattern => pattern.test(path))
}

/** "office/quay-street/*". */
const isFolder = (pattern: string): boolean => /^[^*]*\/\*$/u.test(pattern)

/** "office/" and "office/quay-street/" of "office/quay-street/index.html". */
function foldersAbove(path: string): string[] {
  return [...path.matchAll(/\//gu)].map(({ index }) => path.slice(0, index + 1))
}

function asExpression(pattern: string): RegExp {
  const parts = pattern.split('*').map(part => part.replace(/[.+?^${}()|[\]\\]/gu, String.raw`\$&`))
  return new RegExp(`^${parts.join('.*')}$`, 'u')
}
