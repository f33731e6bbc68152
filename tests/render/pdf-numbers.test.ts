import { describe, expect, it } from 'vitest'
import { lostTargets, wrongNumbers } from '../../src/render/pdf-numbers.ts'
import type { PdfContents } from '../../src/render/pdf-read.ts'

type Finished = Pick<PdfContents, 'destinations' | 'linkedFrom'>

/** A print with these sections, and what its contents print beside each. */
function finished(pages: Readonly<Record<string, number>>, printed: Readonly<Record<string, string>>): Finished {
  const linkedFrom = Object.entries(printed).map(([name, text]) => ({ page: 1, name, text }))
  return { destinations: new Map(Object.entries(pages)), linkedFrom }
}

const filled = (pages: Readonly<Record<string, number>>): Map<string, number> => new Map(Object.entries(pages))

describe('reading the page numbers back', () => {
  it('is content where the contents print the page of each section', () => {
    const pages = { a: 3, b: 12 }
    expect(wrongNumbers(['a', 'b'], filled(pages), finished(pages, { a: '1. Zones 3', b: 'Wires 12' }))).toEqual([])
  })

  it('tells a section that moved after its number was filled in', () => {
    const [wrong] = wrongNumbers(['a'], filled({ a: 3 }), finished({ a: 4 }, { a: 'Zones 3' }))
    expect(wrong).toBe('"a" is on page 4, and the contents say 3.')
  })

  it('tells a number that was filled in and not printed, also where a longer one holds its digits', () => {
    const [wrong] = wrongNumbers(['a'], filled({ a: 3 }), finished({ a: 3 }, { a: 'Zones 13, 30' }))
    expect(wrong).toBe('The contents do not print page 3 for "a".')
  })

  it('tells contents that do not link', () => {
    expect(wrongNumbers(['a'], filled({ a: 3 }), finished({ a: 3 }, {}))).toEqual([
      'Nothing in the contents links to "a".'
    ])
  })

  it('names a target that the print does not hold', () => {
    expect(lostTargets(['a', 'b'], filled({ a: 3 })).join()).toContain('"b"')
    expect(lostTargets(['a'], filled({ a: 3 }))).toEqual([])
  })
})
