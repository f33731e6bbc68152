import { copyFileSync, linkSync, readFileSync, readdirSync, rmSync, statSync, utimesSync } from 'node:fs'
import { join, sep } from 'node:path'

export function sameBytes(path: string, bytes: Uint8Array): boolean {
  return isFile(path) && statSync(path).size === bytes.byteLength && readFileSync(path).equals(bytes)
}

/** A second name for the same file where the disk can; else a copy with the same date. */
export function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to)
  } catch {
    copyFileSync(from, to)
    const { atime, mtime } = statSync(from)
    utimesSync(to, atime, mtime)
  }
}

/** Paths below a folder, with forward slashes. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/')
    )
}

export const isFile = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isFile() === true
export const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() === true

/** What cannot be removed now is removed by the next run. */
export function removeQuietly(path: string): void {
  try {
    rmSync(path, { recursive: true, force: true })
  } catch {
    return
  }
}
