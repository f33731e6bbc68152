import { describe, expect, it } from 'vitest'
import type { Binder, Block, Section } from '../../src/binder/blocks.ts'
import { binderPageCss, binderParts, runsOfPaper } from '../../src/render/binder-parts.ts'
import { coverLook } from '../../src/render/cover-look.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'

const words: Block = { kind: 'paragraph', text: 'a' }
const heading: Block = { kind: 'heading', id: 'h', text: 'h' }
const narrow: Block = { kind: 'table', columns: [], rows: [] }
const wide: Block = { ...narrow, wide: true }
const list: Block = { kind: 'list', ordered: false, items: [] }
const kinds = (blocks: readonly Block[]) =>
  runsOfPaper(blocks).map(run => `${run.wide ? 'wide' : 'upright'}: ${run.blocks.map(block => block.kind).join(' ')}`)

describe('runs of paper', () => {
  it('a wide table turns the paper and takes along the words that lead to it', () => {
    expect(kinds([narrow, heading, words, wide, narrow])).toEqual([
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

  it('up to two lists or drawings stay with their table, three go back', () => {
    expect(kinds([wide, list, list, narrow])).toEqual(['wide: table list list', 'upright: table'])
    expect(kinds([wide, list, list, list])).toEqual(['wide: table', 'upright: list list list'])
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
