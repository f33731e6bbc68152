import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, sep } from 'node:path'
import { afterEach, beforeEach } from 'vitest'

/** A folder of its own for each test of a file, gone afterwards. */
export function temporaryFolder(): { readonly path: (...parts: readonly string[]) => string } {
  let folder = ''
  beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'underlid-build-'))))
  afterEach(() => rmSync(folder, { recursive: true, force: true }))
  return { path: (...parts) => join(folder, ...parts) }
}

export function put(path: string, content: string | Uint8Array = ''): void {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, content)
}

/** Path and text of every file below, but for the marker. */
export function filesIn(folder: string): Record<string, string> {
  const found = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && entry.name !== '.underlid')
    .map(entry => join(entry.parentPath, entry.name))
    .sort()
  const name = (path: string): string =>
    path
      .slice(folder.length + 1)
      .split(sep)
      .join('/')
  return Object.fromEntries(found.map(path => [name(path), readFileSync(path, 'utf8')]))
}
