import {
  chmodSync,
  chownSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync
} from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/base/refusal.ts'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import { harmless } from '../../src/report/harmless.ts'
import { findingsLines } from '../../src/report/text.ts'
import { date } from '../../src/units/date.ts'

/*
 * One folder for each bug that harm to site files brought to light: `sites/` as it was, `links.txt` and `locked.txt` for what a repository does
 * not hold, `findings.txt` with what a person is told. UPDATE_BUGS=1 writes the last anew.
 */
const here = import.meta.dirname
const ON = date('2026-05-01')
const NOBODY = 65_534
const bugs = readdirSync(here, { withFileTypes: true }).flatMap(one => (one.isDirectory() ? [one.name] : []))

const linesOf = (path: string): string[] => (existsSync(path) ? readFileSync(path, 'utf8').trim().split('\n') : [])

/** A copy with its links and rights, and the work done on it as somebody whom rights bind. */
async function onCopy<T>(bug: string, work: (folder: string) => T | Promise<T>): Promise<T> {
  const copy = mkdtempSync(join(tmpdir(), 'underlid-bug-'))
  const isRoot = process.getuid?.() === 0
  try {
    cpSync(join(here, bug), copy, { recursive: true })
    for (const line of linesOf(join(here, bug, 'links.txt'))) {
      const [path = '', to = ''] = line.split(' -> ')
      mkdirSync(dirname(join(copy, path)), { recursive: true })
      symlinkSync(to, join(copy, path))
    }
    for (const path of linesOf(join(here, bug, 'locked.txt'))) chmodSync(join(copy, path), 0)
    if (isRoot) chownSync(copy, NOBODY, NOBODY)
    if (isRoot) process.seteuid?.(NOBODY)
    return await work(copy)
  } finally {
    if (isRoot) process.seteuid?.(0)
    rmSync(copy, { recursive: true, force: true })
  }
}

const told = (folder: string): string =>
  `${harmless(findingsLines(allFindings(assessFleet(join(folder, 'sites'), ON)))).replaceAll(`${folder}/`, '')}\n`

describe('a bug that was found', () => {
  it.each(bugs)('%s: is told of at its place', async bug => {
    const said = await onCopy(bug, told)
    const file = join(here, bug, 'findings.txt')
    if (process.env['UPDATE_BUGS']) writeFileSync(file, said)
    expect(said).toBe(readFileSync(file, 'utf8'))
  })

  it.each(['register-in-utf-16', 'file-locked', 'folder-where-a-file-is-due'])(
    '%s: nothing is built while the register of tags cannot be read',
    async bug => {
      const building = onCopy(bug, folder =>
        buildFleet({ sites: join(folder, 'sites'), out: join(folder, 'dist'), on: ON })
      )
      await expect(building).rejects.toThrow(Refusal)
      await expect(building).rejects.toThrow(/tags\.csv.*a tag that was issued always keeps its page/su)
    }
  )
})
