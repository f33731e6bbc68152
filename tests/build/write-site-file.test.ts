import { chmodSync, existsSync, lstatSync, mkdirSync, readFileSync, readdirSync, statSync, symlinkSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/base/refusal.ts'
import { writeSiteFile, writeSiteFiles } from '../../src/build/write-site-file.ts'
import { put, temporaryFolder } from './temporary-folder.ts'

const folder = temporaryFolder()
const site = (...parts: readonly string[]): string => folder.path('sites', ...parts)
const text = (path: string): string => readFileSync(path, 'utf8')

describe('writing a site file', () => {
  it('makes its folder, writes the text as it is, and leaves nothing beside it', () => {
    const words = '\uFEFF---\r\ntitle: Kestrel Cross\r\n---\r\nAt 22:30, 4 Ω\n'
    writeSiteFile(site('kestrel', 'site.md'), words)
    expect(text(site('kestrel', 'site.md'))).toBe(words)
    expect(readdirSync(site('kestrel'))).toEqual(['site.md'])
  })

  it('keeps the rights of the file it replaces, and a link a link', () => {
    put(site('a', 'real.md'), 'old')
    chmodSync(site('a', 'real.md'), 0o640)
    symlinkSync('real.md', site('a', 'site.md'))
    writeSiteFile(site('a', 'site.md'), 'new')
    expect(text(site('a', 'real.md'))).toBe('new')
    expect(statSync(site('a', 'real.md')).mode & 0o777).toBe(0o640)
    expect(lstatSync(site('a', 'site.md')).isSymbolicLink()).toBe(true)
  })

  it('refuses a new file that is there already', () => {
    put(site('a', 'site.md'), 'mine')
    expect(() => writeSiteFile(site('a', 'site.md'), 'new', { isNew: true })).toThrow(Refusal)
    expect(text(site('a', 'site.md'))).toBe('mine')
  })

  it('refuses to write over what was changed meanwhile', () => {
    put(site('a', 'site.md'), 'edited meanwhile')
    expect(() => writeSiteFile(site('a', 'site.md'), 'new', { was: 'as read' })).toThrow('was changed meanwhile')
    expect(text(site('a', 'site.md'))).toBe('edited meanwhile')
    writeSiteFile(site('a', 'site.md'), 'new', { was: 'edited meanwhile' })
    expect(text(site('a', 'site.md'))).toBe('new')
  })
})

describe('writing several', () => {
  it('writes all of them', () => {
    writeSiteFiles([
      { file: site('a', 'site.md'), text: 'a' },
      { file: site('tags.csv'), text: 't' }
    ])
    expect([text(site('a', 'site.md')), text(site('tags.csv'))]).toEqual(['a', 't'])
  })

  it('writes none where one cannot take its place: those before it go back', () => {
    put(site('a', 'site.md'), 'old')
    mkdirSync(site('tags.csv', 'a folder in the way'), { recursive: true })
    const writing = () =>
      writeSiteFiles([
        { file: site('a', 'site.md'), text: 'new' },
        { file: site('b', 'site.md'), text: 'new' },
        { file: site('tags.csv'), text: 'new' }
      ])
    expect(writing).toThrow(/The site files are as they were\.$/u)
    expect(text(site('a', 'site.md'))).toBe('old')
    expect(existsSync(site('b', 'site.md'))).toBe(false)
    expect(readdirSync(site('a'))).toEqual(['site.md'])
  })

  it('writes none where one was changed meanwhile', () => {
    put(site('tags.csv'), 'changed')
    const files = [
      { file: site('a', 'site.md'), text: 'new' },
      { file: site('tags.csv'), text: 'new', was: 'as read' }
    ]
    expect(() => writeSiteFiles(files)).toThrow(Refusal)
    expect(existsSync(site('a', 'site.md'))).toBe(false)
  })
})
