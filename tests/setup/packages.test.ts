import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { setupFile } from './setup-file.ts'

interface Packages {
  ensurePackages: (folder: string, options: { install: (folder: string) => void }) => 'there' | 'installed'
}
const { ensurePackages } = await setupFile<Packages>('packages.mjs')

let folder = ''
let installs = 0
const install = (): void => {
  installs += 1
  mkdirSync(join(folder, 'node_modules'), { recursive: true })
}
const lock = (version: string, more: object = {}): string =>
  JSON.stringify({ packages: { '': {}, 'node_modules/a': { version, integrity: `sha-${version}` }, ...more } })

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlid-packages-'))
  installs = 0
  writeFileSync(join(folder, 'package-lock.json'), lock('1.0.0'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

describe('the packages', () => {
  it('are installed where there are none, and not again the next time', () => {
    expect(ensurePackages(folder, { install })).toBe('installed')
    expect(ensurePackages(folder, { install })).toBe('there')
    expect(installs).toBe(1)
  })

  it('are installed again when the lock file changes', () => {
    ensurePackages(folder, { install })
    writeFileSync(join(folder, 'package-lock.json'), lock('1.0.1'))
    expect(ensurePackages(folder, { install })).toBe('installed')
    expect(installs).toBe(2)
  })

  it('are installed again after an install that was killed', () => {
    const killed = (): void => {
      install()
      throw new Error('killed')
    }
    expect(() => ensurePackages(folder, { install: killed })).toThrow('killed')
    expect(ensurePackages(folder, { install })).toBe('installed')
  })

  it('are taken as they are where npm itself put in what the lock file says', () => {
    mkdirSync(join(folder, 'node_modules', 'a'), { recursive: true })
    writeFileSync(join(folder, 'node_modules', '.package-lock.json'), lock('1.0.0'))
    expect(ensurePackages(folder, { install })).toBe('there')
    expect(installs).toBe(0)
  })

  it('are not taken as they are where one has another version, or its folder is gone', () => {
    mkdirSync(join(folder, 'node_modules'), { recursive: true })
    writeFileSync(join(folder, 'node_modules', '.package-lock.json'), lock('1.0.0'))
    expect(ensurePackages(folder, { install })).toBe('installed')
    writeFileSync(join(folder, 'package-lock.json'), lock('2.0.0'))
    expect(ensurePackages(folder, { install })).toBe('installed')
    expect(installs).toBe(2)
  })

  it('may lack what is only for another kind of machine', () => {
    const other = { 'node_modules/b': { version: '1.0.0', integrity: 'x', optional: true } }
    writeFileSync(join(folder, 'package-lock.json'), lock('1.0.0', other))
    mkdirSync(join(folder, 'node_modules', 'a'), { recursive: true })
    writeFileSync(join(folder, 'node_modules', '.package-lock.json'), lock('1.0.0'))
    expect(ensurePackages(folder, { install })).toBe('there')
  })
})
