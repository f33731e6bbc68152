import { readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { wordFault } from '../../src/checks/run.ts'
import { loadSite } from '../../src/load/site.ts'
import type { SourceText } from '../../src/load/loaded.ts'
import { baseSite } from '../support/base-site.ts'

const folder = join(dirname(fileURLToPath(import.meta.url)), 'cases')
const names = readdirSync(folder).sort()

/** Shared files that are there: the sheet of the base site. */
const shared: readonly SourceText[] = baseSite().shared

/** What a person is told of a broken file: one block for each finding, as `findings.txt` beside it holds them. */
function told(name: string): string {
  const text = readFileSync(join(folder, name, 'site.md'), 'utf8')
  const loaded = loadSite({ id: name, files: [{ file: `sites/${name}/site.md`, text }], shared })
  const blocks = loaded.faults.map(fault => {
    const { place, code, message, fix } = wordFault(name, fault, CHECKS)
    return `${place.line}:${place.column} ${code}\n  ${message}\n  ${fix}\n  ${mark(place)}\n`
  })
  return `${blocks.join('\n')}\n${loaded.site ? 'The site is built.' : 'The site is not built.'}\n`
}

/** The stretch of the line that the finding points at. */
function mark({ text, column, length }: { text: string; column: number; length: number }): string {
  return `> ${text.slice(column - 1, column - 1 + length)}`
}

describe('a broken site file', () => {
  it.each(names)('%s: each thing that is wrong is told, where it is, with what to write', name => {
    expect(told(name)).toBe(readFileSync(join(folder, name, 'findings.txt'), 'utf8'))
  })
})
