import { describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import { BASE_FILE, baseSite } from '../support/base-site.ts'

const SITE = loadSite(baseSite('', { visits: [['2026-04-10.md', 'on: 2026-04-10\nfound:\n  - VB2 under leaves\n']] }))
const place = (path: readonly (string | number)[], file = BASE_FILE) => SITE.locate({ file, path })
const marked = (path: readonly (string | number)[], file = BASE_FILE) => {
  const { text, column, length } = place(path, file)
  return text.slice(column - 1, column - 1 + length)
}

describe('the place of a fact', () => {
  it('is its value, in block and in brackets', () => {
    expect(marked(['title'])).toBe('Base Site')
    expect(marked(['stations', 0, 'wire', 0, 'length'])).toBe('3 m')
    expect(marked(['stations', 1, 'valve', 'coil-resistance'])).toBe('6 ohm')
    expect(marked(['boxes', 0, 'ties', 1])).toBe('"6.0 m from curb"')
  })

  it('is the key where the value is a map or a list', () => {
    expect(marked(['stations', 0, 'soil'])).toBe('soil')
    expect(marked(['boxes', 0, 'ties'])).toBe('ties')
  })

  it('is the start of an entry for the entry of a list', () => {
    expect(marked(['boxes', 1])).toBe('id: VB2')
    expect(marked(['stations', 0, 'wire', 0])).toMatch(/^\{ size: 1\.5 mm²/u)
  })

  it('is the nearest key that is written where the path is not', () => {
    expect(marked(['stations', 0, 'soil', 'intake'])).toBe('soil')
    expect(marked(['stations', 0, 'splices', 2, 'box'])).toBe('id: K1/1')
    expect(marked(['stations', 99])).toBe('stations')
    expect(place(['winter', 'method'])).toMatchObject({ line: 1, column: 1 })
  })

  it('is found by a station number, as a number or as text', () => {
    const path = ['controllers', 0, 'programs', 0, 'stations']
    expect(marked([...path, 2])).toBe('2 x 8 min soak 30 min')
    expect(marked([...path, '2'])).toBe('2 x 8 min soak 30 min')
  })

  it('is found in sheets and visits', () => {
    expect(marked(['limits', 'pulse-volts'], 'sites/_shared/sheets/plain.md')).toBe('9 V')
    expect(marked(['found', 0], 'sites/base/visits/2026-04-10.md')).toBe('VB2 under leaves')
  })

  it('is the heading of a section of the prose', () => {
    const section = SITE.site?.prose[0]
    expect(section?.heading).toBe('Getting there')
    expect(SITE.locate(section?.at ?? { file: '', path: [] }).text).toBe('## Getting there')
  })

  it('is a line of the register, and the first line of a file that nobody read', () => {
    expect(place([7], 'sites/tags.csv')).toMatchObject({ file: 'sites/tags.csv', line: 7 })
    expect(place(['x'], 'nowhere.md')).toEqual({ file: 'nowhere.md', line: 1, column: 1, length: 0, text: '' })
  })

  it('is the same with Windows line ends and a byte order mark', () => {
    const input = baseSite()
    const windows = {
      ...input,
      files: input.files.map(one => ({ ...one, text: `\uFEFF${one.text.replaceAll('\n', '\r\n')}` }))
    }
    const loaded = loadSite(windows)
    for (const path of [['title'], ['stations', 0, 'area'], ['boxes', 1, 'ties', 0], ['season', 'to'], ['winter']]) {
      expect(loaded.locate({ file: BASE_FILE, path })).toEqual(loadSite(input).locate({ file: BASE_FILE, path }))
    }
  })

  it('of every record of a site is in one of its files', () => {
    const places: unknown[] = []
    const walk = (value: unknown): void => {
      if (typeof value !== 'object' || value === null) return
      if (Object.hasOwn(value, 'at')) places.push(SITE.locate((value as { at: { file: string; path: string[] } }).at))
      Object.values(value).forEach(walk)
    }
    walk(SITE.site)
    expect(places.length).toBeGreaterThan(30)
    expect(places.filter(one => (one as { text: string }).text.trim() === '')).toEqual([])
  })
})
