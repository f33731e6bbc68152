import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll } from 'vitest'

export const PROJECT = resolve(import.meta.dirname, '../..')
export const ON = '2026-05-01'

export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** The command as a user runs it, in a process of its own. */
export function underlid(args: readonly string[], cwd: string): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(PROJECT, 'setup/underlid.mjs'), ...args], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024
  })
  return { code: status, out: stdout, err: stderr }
}

/** A folder of its own with copies of demo sites below sites/, and the tags of those; removed when the file's tests are through. */
export function workFolder(ids: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-e2e-'))
  mkdirSync(join(folder, 'sites'))
  for (const name of ['_shared', ...ids])
    cpSync(join(PROJECT, 'sites', name), join(folder, 'sites', name), { recursive: true })
  const [head = '', ...tags] = readFileSync(join(PROJECT, 'sites/tags.csv'), 'utf8').split('\n')
  const own = tags.filter(line => ids.includes(line.split(',')[1] ?? ''))
  writeFileSync(join(folder, 'sites/tags.csv'), `${[head, ...own].join('\n')}\n`)
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}
