import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, sep } from 'node:path'
import { linkOrCopy, sameBytes } from './output-files.ts'

/** Gives the place of an output below a folder, with the folders above it made. Throws on a path that leaves the folder. */
export function outputPlace(folder: string): (path: string) => string {
  const made = new Set<string>()
  return path => {
    const target = join(folder, path)
    if (!target.startsWith(folder + sep)) throw new Error(`${path} is no path below the output folder.`)
    const parent = dirname(target)
    if (!made.has(parent)) mkdirSync(parent, { recursive: true })
    made.add(parent)
    return target
  }
}

/** Puts a file in place: where the last output holds the same bytes, the same file again, its date included. */
export function placeOutput(last: string, target: string, bytes: Uint8Array): 'changed' | 'unchanged' {
  rmSync(target, { force: true })
  const same = sameBytes(last, bytes)
  if (same) linkOrCopy(last, target)
  else writeFileSync(target, bytes)
  return same ? 'unchanged' : 'changed'
}
