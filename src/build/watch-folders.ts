import { watch } from 'node:fs'
import { join } from 'node:path'
import type { FSWatcher } from 'node:fs'

/** Editors write a file in several steps; a change is told once they have been still for this long. */
const STILL_MS = 120

/**
 * Calls `onChange` with what changed below the folders, paths that begin as these do, never while the call before is still under way; changes meanwhile are
 * told once more at its end. Names that start with a dot are passed over: they are editors' own.
 */
export function watchFolders(
  folders: readonly string[],
  onChange: (changed: readonly string[]) => Promise<void>
): { readonly close: () => void } {
  let timer: NodeJS.Timeout | undefined
  let busy = false
  let again = false
  let closed = false
  const changed = new Set<string>()
  const run = async (): Promise<void> => {
    if (busy) return void (again = true)
    busy = true
    const paths = [...changed]
    changed.clear()
    await onChange(paths).finally(() => (busy = false))
    if (again && !closed) noticed()
    again = false
  }
  const noticed = (): void => {
    clearTimeout(timer)
    if (!closed) timer = setTimeout(() => void run(), STILL_MS)
  }
  const heard = (folder: string, name: string | null): void => {
    if (name?.split(/[\\/]/u).some(part => part.startsWith('.'))) return
    changed.add(join(folder, name ?? ''))
    noticed()
  }
  const watchers: FSWatcher[] = folders.map(folder => {
    // A folder that vanishes while it is watched is no reason to stop.
    return watch(folder, { recursive: true }, (_event, name) => heard(folder, name)).on('error', () => undefined)
  })
  const close = (): void => {
    closed = true
    clearTimeout(timer)
    for (const watcher of watchers) watcher.close()
  }
  return { close }
}
