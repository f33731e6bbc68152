import { mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import type { SiteDigest } from './site-digest.ts'

/** A file of the output as it was left: another size or date, and somebody else touched it. */
export interface KeptFile {
  readonly path: string
  readonly bytes: number
  readonly changedMs: number
}

/** What is kept of a site from one build to the next. */
export interface KeptSite {
  /** Of the unit it was made from: another key, and it is made anew. */
  readonly key: string
  readonly digest: SiteDigest
  /** Absent where the site was only checked. */
  readonly files?: readonly KeptFile[]
}

/** Beside the output, so that it is gone for nobody but those who build: "dist" has ".dist.cache". */
export function cacheFolder(out: string): string {
  const folder = resolve(out)
  return join(dirname(folder), `.${basename(folder)}.cache`)
}

/** Undefined where nothing is kept of it, or not under this key, or what is kept cannot be read. */
export function readKept(cache: string, id: string, key: string): KeptSite | undefined {
  try {
    const text = readFileSync(join(cache, `${id}.json`), 'utf8')
    if (!text.startsWith(`{"key":"${key}"`)) return undefined
    return JSON.parse(text) as KeptSite
  } catch {
    return undefined
  }
}

/** Whole or not at all; a cache that cannot be written costs time and nothing else. */
export function writeKept(cache: string, id: string, kept: KeptSite): void {
  const path = join(cache, `${id}.json`)
  try {
    mkdirSync(cache, { recursive: true })
    const { key, ...others } = kept
    writeFileSync(`${path}.new`, JSON.stringify({ key, ...others }))
    renameSync(`${path}.new`, path)
  } catch {
    rmSync(path, { force: true })
  }
}

/** Forgets sites that are no longer there. */
export function forgetOthers(cache: string, ids: ReadonlySet<string>): void {
  for (const name of namesIn(cache))
    if (name.endsWith('.json') && !name.startsWith('_') && !ids.has(name.slice(0, -'.json'.length)))
      rmSync(join(cache, name), { force: true })
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}

/** True where every file stands in the output as it was left. */
export function isIntact(out: string, files: readonly KeptFile[]): boolean {
  return files.every(file => {
    const found = statSync(join(out, file.path), { throwIfNoEntry: false })
    return found?.isFile() === true && found.size === file.bytes && found.mtimeMs === file.changedMs
  })
}

export function keptFile(folder: string, path: string): KeptFile {
  const { size, mtimeMs } = statSync(join(folder, path))
  return { path, bytes: size, changedMs: mtimeMs }
}
