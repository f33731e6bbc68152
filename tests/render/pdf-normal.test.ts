import { describe, expect, it } from 'vitest'
import { normalizePdf } from '../../src/render/pdf-normal.ts'
import type { PdfFacts } from '../../src/render/pdf-normal.ts'
import { knownPdfFile, readPdfFile } from '../../src/render/pdf-file.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { writePdfFile } from '../../src/render/pdf-write.ts'
import { date } from '../../src/units/date.ts'
import { pdfObjects } from './pdf-fixture.ts'

/** A file of the form that browsers write, with a correct table of offsets. */
function browserPdf(objects: readonly string[]): Uint8Array {
  let text = '%PDF-1.4\n%\u00d3\u00eb\u00e9\u00e1\n'
  const offsets = objects.map((object, index) => {
    const offset = text.length
    text += `${index + 1} 0 obj\n${object}\nendobj\n`
    return offset
  })
  const start = text.length
  const entries = ['0000000000 65535 f ', ...offsets.map(offset => `${String(offset).padStart(10, '0')} 00000 n `)]
  text += `xref\n0 ${entries.length}\n${entries.join('\n')}\ntrailer\n<</Size ${entries.length}\n/Root 2 0 R\n/Info 1 0 R>>\nstartxref\n${start}\n%%EOF\n`
  return new Uint8Array(Buffer.from(text, 'latin1'))
}

const document = (nodes: readonly [string, string], time: string): Uint8Array =>
  browserPdf([
    `<</Title (x)\n/Creator (Browser)\n/Producer (Browser)\n/CreationDate (D:${time})\n/ModDate (D:${time})>>`,
    '<</Type /Catalog\n/Pages 3 0 R\n/StructTreeRoot 9 0 R>>',
    '<</Type /Pages\n/Count 1\n/Kids [4 0 R]>>',
    '<</Type /Page\n/MediaBox [0 0 612 792]\n/Contents 5 0 R\n/Parent 3 0 R>>',
    '<</Length 18>> stream\n(node00000099) Tj \nendstream',
    `<</Type /StructElem\n/S /TH\n/ID (${nodes[0]})>>`,
    `<</Type /StructElem\n/S /TH\n/ID (${nodes[1]})>>`,
    `<</Type /StructElem\n/S /TD\n/A [<</O /Table\n/Headers [(${nodes[1]})]>>]>>`,
    '<</Type /StructTreeRoot\n/IDTree 10 0 R>>',
    '<</Kids [11 0 R]>>',
    leaf([
      [nodes[0], 6],
      [nodes[1], 7]
    ])
  ])

/** A leaf of the tree of names, sorted as it has to be. */
function leaf(names: readonly (readonly [string, number])[]): string {
  const sorted = names.toSorted(([a], [b]) => (a < b ? -1 : 1))
  const entries = sorted.map(([name, number]) => `(${name}) ${number} 0 R`)
  return `<</Limits [(${sorted[0]?.[0]}) (${sorted.at(-1)?.[0]})]\n/Names [${entries.join(' ')}]>>`
}

const normalized = (bytes: Uint8Array, facts: PdfFacts): Uint8Array =>
  writePdfFile(normalizePdf(knownPdfFile(bytes), facts))

const facts = { title: 'Quay (Street) \\ 1', on: date('2026-05-01') }

describe('evening out a print', () => {
  it('makes prints equal that differ in their time and in how the browser counted nodes', () => {
    const one = normalized(document(['node00000007', 'node00000012'], "20260501101500+00'00'"), facts)
    const two = normalized(document(['node00000131', 'node00000140'], "20261125130146+00'00'"), facts)
    const backward = normalized(document(['node00000140', 'node00000131'], "20261125130146+00'00'"), facts)
    expect(Buffer.from(one).equals(Buffer.from(two))).toBe(true)
    expect(Buffer.from(one).equals(Buffer.from(backward))).toBe(true)
  })

  it('keeps cells and their heads together, and leaves text alone that looks like a node', () => {
    const objects = pdfObjects(normalized(document(['node00000007', 'node00000012'], 'x'), facts))
    expect(objects).toContain('/ID (node00000001)')
    expect(objects).toContain('/Headers [(node00000002)]')
    expect(objects).toContain('<</Names [(node00000001) 6 0 R (node00000002) 7 0 R]>>')
    expect(objects).not.toContain('/Limits')
    expect(objects).toContain('(node00000099) Tj')
  })

  it('makes documents with other content have other ids', () => {
    const id = (title: string): string | undefined =>
      /\/ID \[<(\w+)>/u.exec(
        Buffer.from(normalized(document(['node1', 'node2'], 'x'), { ...facts, title })).toString('latin1')
      )?.[1]
    expect(id('a')).toMatch(/^[0-9a-f]{32}$/u)
    expect(id('a')).not.toBe(id('b'))
  })

  it.each(['Quay (Street) \\ 1', 'Ångström – Ω', '水', '𝄞 clef', ''])(
    'writes the title "%s" so that a reader reads it',
    async title => {
      const { title: read, pages } = await readPdf(normalized(document(['node1', 'node2'], 'x'), { ...facts, title }))
      expect(read).toBe(title)
      expect(pages).toBe(1)
    }
  )

  it('gives up on a form it does not know rather than write something broken', () => {
    const broken = [
      new Uint8Array(),
      new TextEncoder().encode('%PDF-1.7 and nothing else'),
      document(['a', 'b'], 'x').slice(0, -30)
    ]
    for (const bytes of broken) {
      expect(readPdfFile(bytes)).toBeUndefined()
      expect(() => normalized(bytes, facts)).toThrow('of a form that is not known')
    }
  })

  it('gives up where the table of offsets is not right', () => {
    const text = Buffer.from(document(['a', 'b'], 'x'))
      .toString('latin1')
      .replace('2 0 obj', '  2 0 obj')
    expect(readPdfFile(Buffer.from(text, 'latin1'))).toBeUndefined()
  })
})
