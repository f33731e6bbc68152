import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFrontMatter } from '../../src/load/front-matter.ts'
import { MOST_ENTRIES, MOST_LETTERS, readVisit } from '../../src/load/read-visit.ts'
import { visitText } from '../../src/load/write-visit.ts'

const SITE = { file: 'sites/a/site.md', text: '---\ntitle: A\nunits: metric\ncontrollers: [{ id: K1 }]\n---\n' }
const read = (text: string) => readVisit({ file: 'slip', text }, SITE)

describe('a visit as a file', () => {
  it('has a line for each record, in the order of the manual', () => {
    const data = {
      open: ['Z3 coil to be swapped'],
      batteries: [{ controller: 'K1', fitted: '2026-05-04', kind: '9 V alkaline', count: 1, rest: '9.4 V' }],
      by: 'M. Example, Example Landscapes',
      on: '2026-05-04'
    }
    expect(visitText(data, 'from the slip of VB1')).toBe(
      [
        '---',
        '# from the slip of VB1',
        'on: 2026-05-04',
        'by: M. Example, Example Landscapes',
        'batteries:',
        '  - { controller: K1, fitted: 2026-05-04, kind: 9 V alkaline, count: 1, rest: 9.4 V }',
        'open:',
        '  - Z3 coil to be swapped',
        '---',
        ''
      ].join('\n')
    )
  })

  it.each([
    '---',
    '- a',
    '# x',
    'a: b',
    '{ a }',
    '[a]',
    '"q"',
    "it's",
    '&a',
    '*a',
    '!x',
    '| x',
    '> x',
    '%x',
    '@x',
    '`x',
    '? x',
    'null',
    '~',
    'yes',
    '0391',
    '1.10',
    '2026-05-04',
    '=1+1',
    'a\\nb',
    '...',
    ', x',
    'x }'
  ])('reads back what was typed: %s', typed => {
    const text = visitText({ on: '2026-05-04', found: [typed], parts: [{ item: typed }] })
    expect(readFrontMatter({ file: '', text }).data).toEqual({
      on: '2026-05-04',
      found: [typed],
      parts: [{ item: typed }]
    })
  })

  it('reads back any text at all as that text, once it is cleaned of what no person types', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 40 }), { maxLength: 4 }), found => {
        const slip = `---\non: 2026-05-04\nfound: ${JSON.stringify(found)}\n---\n`
        const { data } = read(slip)
        const again = readFrontMatter({ file: '', text: visitText({ ...data, on: '2026-05-04' }) })
        expect(again.data['on']).toBe('2026-05-04')
        expect(Object.keys(again.data).filter(key => key !== 'on' && key !== 'found')).toEqual([])
      })
    )
  })
})

describe('a visit held against its site', () => {
  it('is taken where all it names is there', () => {
    expect(read('---\non: 2026-05-04\nbatteries: [{ controller: K1, rest: 9 V }]\n---\n').visit?.on).toBe('2026-05-04')
  })

  it.each([
    ['a controller that is not there', 'batteries: [{ controller: K2 }]', 'file/dangling-reference'],
    ['a box that is not there', 'boxes: [VB9]', 'file/dangling-reference'],
    ['a supply that is not there', 'tests: [{ supply: S9, passed: yes }]', 'file/dangling-reference'],
    ['a number without its unit', 'batteries: [{ controller: K1, rest: 9.4 }]', 'file/unit-missing'],
    ['a unit of another kind', 'batteries: [{ controller: K1, rest: 9.4 ohm }]', 'file/unit-wrong-kind'],
    ['a word for a number', 'batteries: [{ controller: K1, rest: flat }]', 'file/not-understood'],
    ['a key that no visit has', 'admin: yes', 'file/unknown-key']
  ])('is refused with its line for %s', (_, line, code) => {
    const { visit, faults } = read(`---\non: 2026-05-04\n${line}\n---\n`)
    expect(visit).toBeUndefined()
    expect(faults.map(fault => [fault.code, fault.place.line])).toEqual([[code, 3]])
  })

  it('loses control characters, marks that turn the writing round, and line ends in a text', () => {
    const { data } = read('---\non: 2026-05-04\nfound: ["a\\u001b[2J\\u202eb\\nc"]\n---\n')
    expect(data['found']).toEqual(['a [2Jb c'])
  })

  it(`takes ${MOST_LETTERS} characters and ${MOST_ENTRIES} entries, and not one more`, () => {
    const one = (letters: number) => read(`---\non: 2026-05-04\nfound: ["${'a'.repeat(letters)}"]\n---\n`).faults.length
    const many = (entries: number) =>
      read(`---\non: 2026-05-04\nfound: [${Array.from({ length: entries }, () => 'a').join(', ')}]\n---\n`).faults
        .length
    expect([one(MOST_LETTERS), one(MOST_LETTERS + 1)]).toEqual([0, 1])
    expect([many(MOST_ENTRIES), many(MOST_ENTRIES + 1)]).toEqual([0, 1])
  })

  it('runs nothing and follows no alias', () => {
    expect(read('---js\nmodule.exports = {}\n---\n').visit).toBeUndefined()
    expect(read('---\non: 2026-05-04\nfound: &a [x]\nopen: *a\n---\n').visit).toBeUndefined()
  })
})
