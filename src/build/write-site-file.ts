import {
  closeSync,
  existsSync,
  linkSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { diskTrouble } from './disk-trouble.ts'
import { Refusal } from '../base/refusal.ts'

export interface SiteFileToWrite {
  readonly file: string
  readonly text: string | Uint8Array
  /** True for a file that must not be there yet. */
  readonly isNew?: boolean
  /** Where given: the text that the change was made from. Refused where the file says something else by now. */
  readonly was?: string
}

/** One file of a site, whole or not at all. */
export function writeSiteFile(file: string, text: string, wish: Omit<SiteFileToWrite, 'file' | 'text'> = {}): void {
  writeSiteFiles([{ file, text, ...wish }])
}

/**
 * Several files that belong together, all or none: a site file and the register. Each is written beside its place and made safe on
 * disk before any takes its place; where one cannot, those before it go back to what they were. A kill between two renames leaves
 * the first new and the second old, so the file that the others depend on comes first.
 */
export function writeSiteFiles(files: readonly SiteFileToWrite[]): void {
  for (const wish of files) refuseSurprises(wish)
  const steps = files.map(({ file, text, isNew }) => ({
    target: realPath(file),
    text,
    before: readIfThere(file),
    isNew: isNew === true
  }))
  const beside = steps.map(({ target }) => join(dirname(target), `.${basename(target)}.new-${process.pid}`))
  const placed: number[] = []
  try {
    for (const [index, step] of steps.entries()) writeWhole(beside[index] ?? '', step.text, step.target)
    for (const [index, { target, isNew }] of steps.entries()) {
      if (isNew) takeFreePlace(beside[index] ?? '', target)
      else renameSync(beside[index] ?? '', target)
      placed.push(index)
    }
  } catch (error) {
    for (const index of placed) putBack(steps[index])
    for (const path of beside) rmSync(path, { force: true })
    throw diskTrouble(error, 'The site files are as they were.')
  }
}

function refuseSurprises({ file, isNew, was }: SiteFileToWrite): void {
  const there = readIfThere(file)
  if (isNew && there !== undefined) throw new Refusal(`${file} is there already, so nothing was written.`)
  if (was !== undefined && there !== was)
    throw new Refusal(
      `${file} was changed meanwhile, so nothing was written.`,
      'Do it again with the file as it is now.'
    )
}

/** On disk for good before anything is renamed; with the rights of the file it replaces. */
function writeWhole(path: string, text: string | Uint8Array, target: string): void {
  mkdirSync(dirname(path), { recursive: true })
  const mode = statSync(target, { throwIfNoEntry: false })?.mode
  writeFileSync(path, text, { encoding: 'utf8', ...(mode === undefined ? {} : { mode: mode & 0o777 }) })
  const handle = openSync(path, 'r+')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** A second name for the file, which fails where somebody else took the place meanwhile; renaming would write over it. */
function takeFreePlace(from: string, target: string): void {
  try {
    linkSync(from, target)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === 'EEXIST') throw new Refusal(`${target} is there already, so nothing was written.`)
    // Some file systems know no second names.
    renameSync(from, target)
    return
  }
  rmSync(from, { force: true })
}

function putBack(step: { readonly target: string; readonly before: string | undefined } | undefined): void {
  if (!step) return
  if (step.before === undefined) rmSync(step.target, { force: true })
  else writeFileSync(step.target, step.before)
}

/** A link to a file stays a link. */
const realPath = (file: string): string => (existsSync(file) ? realpathSync(file) : file)

function readIfThere(file: string): string | undefined {
  try {
    return statSync(file, { throwIfNoEntry: false })?.isFile() ? readFileSync(file, 'utf8') : undefined
  } catch (error) {
    throw diskTrouble(error, 'The site files are as they were.')
  }
}
