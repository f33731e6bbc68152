import { renameSync } from 'node:fs'
import { isFolder, removeQuietly } from './output-files.ts'
import { oldFolder } from './output-folder.ts'

/** The old output is moved aside, the new one in; where that fails, the old one goes back. */
export function swapIn(folder: string, next: string): void {
  const old = oldFolder(folder)
  const hadOne = isFolder(folder)
  if (hadOne) renameSync(folder, old)
  try {
    renameSync(next, folder)
  } catch (error) {
    if (hadOne) renameSync(old, folder)
    throw error
  }
  removeQuietly(old)
}
