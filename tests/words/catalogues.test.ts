import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { CATALOGUES, LANGUAGES, wordsOf } from '../../src/words/languages.ts'
import { leavesOf, partsOf, saidBy, shapeOf } from './texts.ts'
import { ALIKE, PUT_TOGETHER } from './alike.ts'

const ROOT = join(import.meta.dirname, '../..')
const [english, ...others] = CATALOGUES
if (!english) throw new Error('There is no catalogue.')
const own = (key: string): boolean => key !== 'language' && key !== 'name'
const leaves = leavesOf(english).filter(([key]) => own(key))

const shapes = (words: unknown) =>
  Object.fromEntries(leavesOf(words).map(([key, value]) => [key, shapeOf(value)] as const))
const figures = (text: string): string[] => (text.match(/\d+(?:[.,]\d+)*/gu) ?? []).sort()
const braces = (text: string): string[] => (text.match(/\{\w+\}/gu) ?? []).sort()

describe('every catalogue', () => {
  it('has a language and a name of its own', () => {
    expect(new Set(LANGUAGES).size).toBe(CATALOGUES.length)
    expect(new Set(CATALOGUES.map(one => one.name)).size).toBe(CATALOGUES.length)
    for (const one of CATALOGUES) expect(wordsOf(one.language)).toBe(one)
  })

  it('is found by its language; a language that is not there gets the first', () => {
    expect(wordsOf('xx')).toBe(english)
    expect(wordsOf(undefined)).toBe(english)
  })

  it('is one folder, and every file of a folder is in use', () => {
    const files = CATALOGUES.map(({ language }) => ({
      language,
      names: readdirSync(join(ROOT, 'src/words', language)).filter(name => name !== 'index.ts')
    }))
    for (const { language, names } of files)
      expect([language, ...names]).toEqual([language, ...(files[0]?.names ?? [])])
  })
})

describe('what the catalogues are held against', () => {
  it('sees an argument that is not used', () => {
    expect(partsOf((count: number, noun: string) => `${noun} of some`).used).toEqual([false, true])
    expect(partsOf((from: string | undefined) => (from === undefined ? 'none' : 'some')).used).toEqual([true])
  })

  it('reads the texts of a function without what is filled in', () => {
    expect(partsOf((day: string) => `Data of ${day}, ${'as found'}.`).text.split(/\s*,?\s+/u)).toEqual([
      'Data',
      'of',
      'as',
      'found',
      '.'
    ])
  })

  it('lists every text and function under its key, lists by their place', () => {
    expect(leavesOf({ a: { b: 'x', c: ['y', 'z'] }, d: () => '' }).map(([key]) => key)).toEqual([
      'a.b',
      'a.c.0',
      'a.c.1',
      'd'
    ])
  })
})

describe.each(others.map(words => [words.language, words] as const))('the catalogue %s', (language, words) => {
  const pairs = leavesOf(words).filter(([key]) => own(key))
  const inEnglish = new Map(leaves)

  it('has each key of the first, with as many arguments, and no other', () => {
    expect(shapes(words)).toEqual(shapes(english))
  })

  it('uses each argument that the first uses', () => {
    const ignored = pairs.flatMap(([key, say]) => {
      const first = inEnglish.get(key)
      if (typeof say === 'string' || typeof first !== 'function') return []
      const mine = partsOf(say).used
      return partsOf(first).used.flatMap((used, place) =>
        used && !mine[place] ? [`${key}, argument ${place + 1}`] : []
      )
    })
    expect(ignored).toEqual([])
  })

  it('says nothing in the words of the first but what is alike in both', () => {
    const same = pairs.flatMap(([key, value]) => {
      const said = saidBy(value)
      return /\p{L}{3}/u.test(said) && said === saidBy(inEnglish.get(key) ?? '') ? [key] : []
    })
    expect(same.filter(key => !ALIKE[language]?.includes(key))).toEqual([])
    expect(ALIKE[language]?.filter(key => !same.includes(key)) ?? []).toEqual([])
  })

  it('never changes a figure, nor what the script of a page fills in', () => {
    const changed = pairs.flatMap(([key, value]) => {
      const [mine, first] = [saidBy(value), saidBy(inEnglish.get(key) ?? '')]
      const same = figures(mine).join() === figures(first).join() && braces(mine).join() === braces(first).join()
      return same ? [] : [key]
    })
    expect(changed).toEqual([])
  })

  it('ends a text as the first does', () => {
    const ends = (text: string): string => /[.:?]$/u.exec(text.trim())?.[0] ?? ''
    const differ = pairs.flatMap(([key, value]) => {
      const first = inEnglish.get(key)
      return typeof value === 'string' && typeof first === 'string' && ends(value) !== ends(first) && ends(first) !== ''
        ? [key]
        : []
    })
    expect(differ).toEqual([])
  })
})

describe('the Spanish catalogue', () => {
  /** Other words for a thing that has its term in docs/terms-es.md. */
  const RIVALS =
    /\b(?:cajas?|medidor(?:es)?|controlador(?:es)?|manómetros? de agua|(?:el|un|cada|los) sitios?|sitios|hidrómetros?)\b/iu

  it('keeps to one term for one thing', () => {
    const rivals = leavesOf(wordsOf('es')).flatMap(([key, value]) => {
      const [rival] = RIVALS.exec(saidBy(value)) ?? []
      return rival === undefined ? [] : [`${key}: ${rival}`]
    })
    expect(rivals).toEqual([])
  })
})

describe('each word of the first catalogue', () => {
  const sources = ['src', 'templates'].flatMap(folder =>
    (readdirSync(join(ROOT, folder), { recursive: true }) as string[])
      .filter(file => /\.(?:ts|njk)$/u.test(file) && !(folder === 'src' && file.startsWith('words')))
      .map(file => readFileSync(join(ROOT, folder, file), 'utf8'))
  )
  const text = sources.join('\n')
  const asked = new Set(text.match(/[\p{L}\d_$]+/gu))
  const quoted = new Set([...text.matchAll(/'([^'\n]+)'|"([^"\n]+)"/gu)].map(([, one, two]) => one ?? two))

  it('is asked for by name somewhere: one that nothing asks for is a leftover', () => {
    const names = new Set(leaves.flatMap(([key]) => key.split('.')).filter(name => !/^\d+$/u.test(name)))
    const unused = [...names].filter(name => !asked.has(name) && !quoted.has(name) && !PUT_TOGETHER.includes(name))
    expect(unused).toEqual([])
  })
})
