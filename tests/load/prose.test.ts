import { describe, expect, it } from 'vitest'
import { readFrontMatter } from '../../src/load/front-matter.ts'
import { proseOf } from '../../src/load/prose.ts'

const sections = (body: string) =>
  proseOf(readFrontMatter({ file: 'x/site.md', text: `---\ntitle: X\n---\n${body}` })).map(
    ({ heading, markdown, line }) => ({
      heading,
      markdown,
      line
    })
  )

describe('prose', () => {
  it('is cut at its headings, and what stands before the first has none', () => {
    expect(sections('Before.\n\n## One\n\nText.\n\n### Deeper\n\nMore.\n\n## Two\n')).toEqual([
      { heading: '', markdown: 'Before.', line: 4 },
      { heading: 'One', markdown: 'Text.\n\n### Deeper\n\nMore.', line: 6 },
      { heading: 'Two', markdown: '', line: 14 }
    ])
  })

  it('is cut at the highest level there is, where there are only small headings', () => {
    expect(sections('### One\n\nA.\n\n#### Deeper\n\n### Two\n').map(one => one.heading)).toEqual(['One', 'Two'])
  })

  it('takes a title over its sections for a section as well', () => {
    expect(sections('# Site\n\n## One\n').map(one => one.heading)).toEqual(['Site', 'One'])
  })

  it('keeps a number sign in a block of code, and takes underlined headings', () => {
    expect(sections('One\n===\n\n```\n# not a heading\n```\n').map(one => one.heading)).toEqual(['One'])
  })

  it('keeps braces and HTML as text', () => {
    expect(sections('## A\n\n{{ x }} {% y %} <b>z</b>\n')[0]?.markdown).toBe('{{ x }} {% y %} <b>z</b>')
  })

  it('is the same with Windows line ends', () => {
    const body = 'Before.\n\n## One\n\nText\nover lines.\n'
    expect(sections(body.replaceAll('\n', '\r\n'))).toEqual(sections(body))
  })

  it('may be nothing', () => {
    for (const body of ['', '\n', '\n\n  \n']) expect(sections(body)).toEqual([])
  })
})
