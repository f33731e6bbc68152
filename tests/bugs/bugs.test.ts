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
import { inProcess } from '../fuzz/try-verb.ts'
import type { Said } from '../fuzz/try-verb.ts'

/*
 * One folder for each bug that harm to site files brought to light: `sites/` as it was, `links.txt` and `locked.txt` for what a repository does
 * not hold, `findings.txt` with what a person is told. A bug of what was handed to a verb has `call.txt` with the call, on a demo site, and
 * `said.txt` with the answer. UPDATE_BUGS=1 writes what is told anew.
 */
const here = import.meta.dirname
const ON = date('2026-05-01')
const NOBODY = 65_534
const all = readdirSync(here, { withFileTypes: true }).flatMap(one => (one.isDirectory() ? [one.name] : []))
const calls = all.filter(one => existsSync(join(here, one, 'call.txt')))
const bugs = all.filter(one => !calls.includes(one))

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

/** What the verb answers to what is handed in, in a folder with the demo site that it names. */
async function answered(bug: string): Promise<Said> {
  const copy = mkdtempSync(join(tmpdir(), 'underlid-bug-'))
  try {
    cpSync(join(here, bug), copy, { recursive: true })
    for (const name of ['_shared', 'kestrel-cross', 'tags.csv'])
      cpSync(join(here, '../../sites', name), join(copy, 'sites', name), { recursive: true })
    const [verb = '', ...args] = linesOf(join(here, bug, 'call.txt'))[0]?.split(' ') ?? []
    const placed = args.map(one => (existsSync(join(copy, one)) ? join(copy, one) : one))
    const said = await inProcess([verb, ...placed, '--sites', join(copy, 'sites')])
    return { ...said, text: said.text.replaceAll(`${copy}/`, '') }
  } finally {
    rmSync(copy, { recursive: true, force: true })
  }
}

describe('a bug that was found', () => {
  it.each(calls)('%s: is answered in words', async bug => {
    const { code, text, threw } = await answered(bug)
    const file = join(here, bug, 'said.txt')
    const said = `exit ${code}\n${text.trimEnd()}\n`
    if (process.env['UPDATE_BUGS']) writeFileSync(file, said)
    expect(threw).toBeUndefined()
    expect(said).toBe(readFileSync(file, 'utf8'))
  })

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
