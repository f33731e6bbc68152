import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeTag } from '../../src/domain/tags/tag.ts'
import { loadRegister, writeRegister } from '../../src/load/register.ts'
import { TAG_STATES } from '../../src/model/fleet.ts'
import type { RegisteredTag } from '../../src/model/fleet.ts'
import { date } from '../../src/units/date.ts'

const load = (text: string) => loadRegister({ file: 'sites/tags.csv', text })
const HEAD = 'tag,site,box,state,issued,now\n'
const plain = ({ at: _, ...tag }: RegisteredTag) => tag

describe('the register', () => {
  it('knows the line of each tag', () => {
    const { tags, faults } = load(
      `${HEAD}7KQ3F9X,quay,VB1,live,2026-03-20,\n\nP5DAU38,quay,"VB2\nnorth",moved,2026-03-21,quay/VB3\nXJ6ZE76,quay,VB4,live,,\n`
    )
    expect(faults).toEqual([])
    expect(tags.map(({ tag, at }) => [tag, at.path])).toEqual([
      ['7KQ3F9X', [2]],
      ['P5DAU38', [4]],
      ['XJ6ZE76', [6]]
    ])
  })

  it('is the same with Windows line ends, a byte order mark, semicolons or tabs', () => {
    const text = `${HEAD}7KQ3F9X,quay,VB1,live,2026-03-20,\nP5DAU38,quay,VB2,replaced,2026-03-21,7KQ3F9X\n`
    const expected = load(text)
    expect(expected.tags.length).toBe(2)
    for (const other of [
      `\uFEFF${text.replaceAll('\n', '\r\n')}`,
      text.replaceAll(',', ';'),
      text.replaceAll(',', '\t')
    ])
      expect(load(other)).toEqual(expected)
  })

  it('keeps what it can take where a line cannot be taken', () => {
    const { tags, faults } = load(`${HEAD}7KQ3F9X,quay,VB1,lost,2026-03-20,\nP5DAU38,quay,VB2,live,2026-03-21,\n`)
    expect(tags.map(tag => tag.tag)).toEqual(['P5DAU38'])
    expect(faults.map(fault => [fault.code, fault.place.line, fault.details['kind']])).toEqual([
      ['file/register', 2, 'state']
    ])
  })

  it('may end its lines in carriage returns alone; each knows its line', () => {
    const text = `${HEAD}7KQ3F9X,quay,VB1,live,,\nP5DAU38,quay,VB2,lost,,\n`.replaceAll('\n', '\r')
    expect(load(text).tags.map(tag => [tag.tag, tag.at.path])).toEqual([['7KQ3F9X', [2]]])
    expect(load(text).faults[0]?.place).toMatchObject({ line: 3, text: 'P5DAU38,quay,VB2,lost,,' })
  })

  it('keeps the first of two lines with one tag', () => {
    const { tags, faults } = load(`${HEAD}7KQ3F9X,quay,VB1,live,,\n7KQ3F9X,quay,VB2,live,,\n`)
    expect(tags.map(tag => tag.box)).toEqual(['VB1'])
    expect(faults.map(fault => [fault.code, fault.place.line, fault.related?.[0]?.place.line])).toEqual([
      ['file/duplicate-id', 3, 2]
    ])
  })

  it('may hold no tag, and is asked for its columns where they are not there', () => {
    expect(load(HEAD)).toEqual({ tags: [], faults: [] })
    expect(load('\n').faults.map(fault => fault.details['kind'])).toEqual(['empty'])
    expect(load('Tags of 2026,,\n').faults.map(fault => fault.details['kind'])).toEqual(['columns'])
    expect(load('7kq3f9x,quay,VB1\n').faults.map(fault => fault.details['kind'])).toEqual(['no-head'])
  })

  it('is written so that no spreadsheet runs a cell, and is read back as it was', () => {
    const tag = { tag: '7KQ3F9X', site: 'quay', state: 'live' } as const
    const text = writeRegister([{ ...tag, box: '=HYPERLINK("x")' }])
    expect(text).toBe(`${HEAD}7KQ3F9X,quay,"'=HYPERLINK(""x"")",live,,\n`)
    expect(load(text).tags.map(one => one.box)).toEqual(['=HYPERLINK("x")'])
  })

  it('comes back as it was written, whatever boxes are called', () => {
    const name = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
      .map(text => text.trim())
      .filter(text => text !== '' && !text.startsWith("'"))
    const entry = fc.record({
      tag: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 6, maxLength: 6 }).map(makeTag),
      site: fc.constantFrom('quay', 'kestrel-cross'),
      box: fc.oneof(name, fc.constantFrom('=1+1', '-1', '+VB', '@VB', 'a,b', 'a;b', 'a "b"', 'VB\n2')),
      state: fc.constantFrom(...TAG_STATES.filter(state => state !== 'replaced')),
      issued: fc.constantFrom(date('2026-03-20'), date('2024-02-29'))
    })
    fc.assert(
      fc.property(fc.uniqueArray(entry, { selector: one => one.tag, maxLength: 8 }), entries => {
        const { tags, faults } = load(writeRegister(entries))
        expect(faults).toEqual([])
        expect(tags.map(plain)).toEqual(entries)
      }),
      { numRuns: 200 }
    )
  })
})
