import { describe, expect, it } from 'vitest'
import type { Binder, Block, Section } from '../../src/binder/blocks.ts'
import { binderPageCss, binderParts, headOf, runsOfPaper } from '../../src/render/binder-parts.ts'
import { coverLook } from '../../src/render/cover-look.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'

const words: Block = { kind: 'paragraph', text: 'a' }
const heading: Block = { kind: 'heading', id: 'h', text: 'h' }
const narrow: Block = { kind: 'table', columns: [], rows: [] }
const wide: Block = { ...narrow, wide: true }
const list: Block = { kind: 'list', ordered: false, items: [] }
/** More than half a sheet. */
const long: Block = { kind: 'table', columns: [], rows: [], blankRows: 20 }
const sheet: Block = { kind: 'attachment', file: 'a.pdf', picture: false, page: 1, wide: true, caption: 'a' }
const kinds = (blocks: readonly Block[]) =>
  runsOfPaper(blocks).map(run => `${run.wide ? 'wide' : 'upright'}: ${run.blocks.map(block => block.kind).join(' ')}`)

describe('runs of paper', () => {
  it('a wide table turns the paper and takes along the words that lead to it', () => {
    expect(kinds([long, heading, words, wide, long])).toEqual([
      'upright: table',
      'wide: heading paragraph table',
      'upright: table'
    ])
  })

  it('a section that begins with a wide table begins on turned paper', () => {
    expect(kinds([words, wide])).toEqual(['wide: paragraph table'])
  })

  it('two wide tables with words between them stay together', () => {
    expect(kinds([wide, heading, wide])).toEqual(['wide: table heading table'])
  })

  it('what would not half fill an upright sheet stays on turned paper, before, between and after', () => {
    expect(kinds([narrow, wide, list, narrow, wide, narrow])).toEqual(['wide: table table list table table table'])
    expect(kinds([long, wide])).toEqual(['upright: table', 'wide: table'])
  })

  it('what stands before the next heading stays with its table, where the rest goes back', () => {
    expect(kinds([wide, list, heading, long])).toEqual(['wide: table list', 'upright: heading table'])
  })

  it('a sheet that is bound in turns nothing but itself', () => {
    expect(kinds([heading, words, sheet, narrow])).toEqual([
      'upright: heading paragraph',
      'wide: attachment',
      'upright: table'
    ])
  })

  it('a section with nothing in it still has a place for its title', () => {
    expect(kinds([])).toEqual(['upright: '])
  })

  it('no block is lost or moved, whatever the order', () => {
    const all = [words, wide, list, heading, wide, narrow, words, list, wide, list, list, list]
    expect(runsOfPaper(all).flatMap(run => run.blocks)).toEqual(all)
  })
})

describe('parts of a binder', () => {
  const section = (id: string, newPage: boolean): Section => ({ id, title: id, newPage, blocks: [] })
  const binder = (...sections: Section[]): Binder => ({ ...BINDER_METRIC, sections })

  it('begin where a section starts a sheet; numbers run through', () => {
    const parts = binderParts(binder(section('a', true), section('b', false), section('c', true)))
    expect(parts.map(part => [part.page, part.title])).toEqual([
      ['part-1', 'a'],
      ['part-2', 'c']
    ])
    expect(parts.flatMap(part => part.sections.map(one => one.number))).toEqual([1, 2, 3])
  })

  it('a first section that asks for no new sheet is a part all the same', () => {
    expect(binderParts(binder(section('a', false)))).toHaveLength(1)
  })

  it('page rules name the paper, upright and turned', () => {
    const css = binderPageCss({ ...binder(section('a', true)), paper: 'Letter' })
    expect(css).toContain('@page{size:letter;')
    expect(css).toContain('@page part-1-wide{size:letter landscape;')
  })

  it('a running head names every section of its part, and first and last where they are many', () => {
    const [few] = binderParts(binder(section('a', true), section('b', false)))
    expect(few && headOf(few)).toBe('1\u2002a · 2\u2002b')
    const names = Array.from({ length: 9 }, (_, index) => 'section of a long name '.repeat(index + 1))
    const [many] = binderParts(binder(...names.map((name, index) => section(name.trim(), index === 0))))
    expect(many && headOf(many)).toMatch(/^1\u2002section of a long name … 9\u2002section/u)
  })

  it('a quote, a backslash or a tag in a running foot cannot break out of the style', () => {
    const running = { left: 'A "B" \\ </style><b>', right: '\n' }
    const css = binderPageCss({ ...binder(), running })
    expect(css).not.toContain('</style>')
    expect(css).toContain('A \\22 B\\22  \\5c  \\3c /style\\3e \\3c b\\3e ')
  })
})

describe('the cover', () => {
  const look = (title: string, tags: number) =>
    coverLook({
      ...BINDER_METRIC,
      title,
      cover: { ...BINDER_METRIC.cover, tags: Array.from({ length: tags }, () => ({ box: 'a', tag: 'b' })) }
    })

  it('sets the tags as large as their number allows', () => {
    expect([0, 2, 3, 4, 5, 9, 10, 24, 25, 60].map(count => look('a', count).tags)).toEqual([
      'tags-two',
      'tags-two',
      'tags-three',
      'tags-four',
      'tags-nine',
      'tags-nine',
      'tags-many',
      'tags-many',
      'tags-crowd',
      'tags-crowd'
    ])
  })

  it('sets a long name smaller', () => {
    expect([28, 29, 44, 45].map(length => look('x'.repeat(length), 1).title)).toEqual([
      'title-large',
      'title-long',
      'title-long',
      'title-longest'
    ])
  })
})
