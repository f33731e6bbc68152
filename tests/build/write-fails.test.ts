import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { Refusal } from '../../src/base/refusal.ts'
import { writeSiteFile, writeSiteFiles } from '../../src/build/write-site-file.ts'

/** A disk that gives up at a step of the writing. */
const disk = vi.hoisted(() => ({
  failsAt: '' as '' | 'writeFileSync' | 'fsyncSync' | 'renameSync' | 'linkSync',
  after: 0
}))

vi.mock('node:fs', async original => {
  const real = await original<Record<string, (...args: unknown[]) => unknown>>()
  const failing =
    (name: string) =>
    (...args: unknown[]) => {
      if (disk.failsAt === name && disk.after-- <= 0)
        throw Object.assign(new Error('no space'), { code: 'ENOSPC', path: String(args[0]) })
      return real[name]?.(...args)
    }
  return Object.fromEntries(
    Object.entries(real).map(([name, value]) => [
      name,
      ['writeFileSync', 'fsyncSync', 'renameSync', 'linkSync'].includes(name) ? failing(name) : value
    ])
  )
})

const folder = mkdtempSync(join(tmpdir(), 'underlid-full-'))
const [site, visit] = [join(folder, 'site.md'), join(folder, 'visits/2026-05-04-route.md')]
afterAll(() => rmSync(folder, { recursive: true, force: true }))
beforeEach(() => {
  disk.failsAt = ''
  rmSync(join(folder, 'visits'), { recursive: true, force: true })
  writeFileSync(site, 'as it was')
})

describe('a disk that is full', () => {
  it.each(['writeFileSync', 'fsyncSync', 'renameSync'] as const)('at %s leaves the site file as it was', step => {
    disk.failsAt = step
    disk.after = 0
    expect(() => writeSiteFile(site, 'changed', { was: 'as it was' })).toThrow(Refusal)
    disk.failsAt = ''
    expect(readFileSync(site, 'utf8')).toBe('as it was')
    expect(readdirSync(folder).filter(name => name.includes('new-'))).toEqual([])
  })

  it.each(['writeFileSync', 'fsyncSync'] as const)('at %s leaves no half of a visit', step => {
    disk.failsAt = step
    disk.after = 0
    expect(() => writeSiteFile(visit, 'a visit', { isNew: true })).toThrow('The disk is full')
    disk.failsAt = ''
    expect(existsSync(visit)).toBe(false)
  })

  it('without second names, as some disks are, still takes a new file', () => {
    disk.failsAt = 'linkSync'
    disk.after = 0
    writeSiteFile(visit, 'a visit', { isNew: true })
    expect(readFileSync(visit, 'utf8')).toBe('a visit')
    expect(readdirSync(join(folder, 'visits'))).toEqual(['2026-05-04-route.md'])
  })

  it('at the second of two files takes the first back', () => {
    disk.failsAt = 'renameSync'
    disk.after = 1
    const files = [
      { file: site, text: 'changed' },
      { file: visit, text: 'a visit' }
    ]
    expect(() => writeSiteFiles(files)).toThrow(Refusal)
    disk.failsAt = ''
    expect([readFileSync(site, 'utf8'), existsSync(visit)]).toEqual(['as it was', false])
  })
})

it('two writers of one new file: the second is refused, and the first stays', async () => {
  const code = `
    import { writeSiteFile } from ${JSON.stringify(join(process.cwd(), 'src/build/write-site-file.ts'))}
    try { writeSiteFile(${JSON.stringify(visit)}, process.argv[2], { isNew: true }); console.log('wrote ' + process.argv[2]) } catch { console.log('refused') }`
  const script = join(folder, 'write.mts')
  writeFileSync(script, code)
  const run = (name: string) =>
    new Promise<string>(resolve => {
      execFile(process.execPath, ['--import', 'tsx', script, name], { cwd: process.cwd() }, (_, out) =>
        resolve(out.trim())
      )
    })
  const said = await Promise.all(['a', 'b', 'c'].map(run))
  const [winner] = said.filter(one => one.startsWith('wrote'))
  expect(said.filter(one => one === 'refused')).toHaveLength(2)
  expect(`wrote ${readFileSync(visit, 'utf8')}`).toBe(winner)
  expect(readdirSync(join(folder, 'visits'))).toEqual(['2026-05-04-route.md'])
})
