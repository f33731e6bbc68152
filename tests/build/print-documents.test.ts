import { createHash } from 'node:crypto'
import { readFileSync, statSync, writeFileSync } from 'node:fs'
import { afterEach, describe, expect, it } from 'vitest'
import { withStage } from '../../src/build/output-stage.ts'
import type { OutputFile } from '../../src/build/output-stage.ts'
import { printDocuments } from '../../src/build/print-documents.ts'
import type { DocumentToPrint, PrintReport } from '../../src/build/print-documents.ts'
import { date } from '../../src/units/date.ts'
import { filesIn, temporaryFolder } from './temporary-folder.ts'

const folder = temporaryFolder()
const dist = (...parts: readonly string[]): string => folder.path('dist', ...parts)
const setting = process.env.UNDERLID_BROWSER
afterEach(() => {
  if (setting === undefined) delete process.env.UNDERLID_BROWSER
  else process.env.UNDERLID_BROWSER = setting
})

const html = (words: string, more = ''): string =>
  `<!doctype html><html lang="en-US"><title>${words}</title><link rel="stylesheet" href="../print.css"><h1>${words}</h1>${more}</html>`
const css = (color: string): OutputFile => ({
  path: 'office/print.css',
  content: `@page { size: A4 } h1 { color: ${color} }`
})
const binder = (site: string): DocumentToPrint => ({
  html: `office/${site}/binder.html`,
  pdf: `print/${site}-binder.pdf`,
  paper: 'A4',
  on: date('2026-05-01')
})
const page = (site: string, words = site, more = ''): OutputFile => ({
  path: `office/${site}/binder.html`,
  content: html(words, more)
})

async function printing(files: readonly OutputFile[], documents: readonly DocumentToPrint[]): Promise<PrintReport> {
  const { result } = await withStage(dist(), stage => {
    for (const file of files) stage.write(file)
    return printDocuments(stage, documents, { base: 'HTTPS://EXAMPLE.ORG' })
  })
  return result
}

const SITES = ['quay', 'roof']
const pages = (changes: Record<string, string> = {}): OutputFile[] => [
  css('black'),
  ...SITES.map(site => page(site, changes[site] ?? site))
]
const documents = SITES.map(binder)
const hash = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex')

describe('printing the documents of an output', () => {
  it('prints each to its place, and tells of each', async () => {
    const told: string[] = []
    await withStage(dist(), stage => {
      for (const file of pages()) stage.write(file)
      return printDocuments(stage, documents, {
        base: 'HTTPS://EXAMPLE.ORG',
        onDone: (pdf, how) => told.push(`${pdf} ${how}`)
      })
    })
    for (const site of SITES)
      expect(
        readFileSync(dist('print', `${site}-binder.pdf`))
          .subarray(0, 5)
          .toString()
      ).toBe('%PDF-')
    expect(told.sort()).toEqual(['quay', 'roof'].map(site => `print/${site}-binder.pdf printed`))
  })

  it('prints again only what changed: the document, what it shows, the day, the paper', async () => {
    const all = await printing(pages(), documents)
    expect(all.printed).toHaveLength(2)
    const before = statSync(dist('print', 'quay-binder.pdf')).mtimeMs
    expect(await printing(pages(), documents)).toEqual({ printed: [], failed: [], reused: all.printed })
    expect(statSync(dist('print', 'quay-binder.pdf')).mtimeMs).toBe(before)
    expect((await printing(pages({ roof: 'Roof garden' }), documents)).printed).toEqual(['print/roof-binder.pdf'])
    expect((await printing(pages({ roof: 'Roof garden' }).with(0, css('gray')), documents)).printed).toHaveLength(2)
    const later = documents.with(0, { ...binder('quay'), on: date('2026-05-02') })
    expect((await printing(pages({ roof: 'Roof garden' }).with(0, css('gray')), later)).printed).toEqual([
      'print/quay-binder.pdf'
    ])
  })

  it('prints again what somebody changed or took away by hand', async () => {
    await printing(pages(), documents)
    const good = hash(dist('print', 'quay-binder.pdf'))
    writeFileSync(dist('print', 'quay-binder.pdf'), 'not a PDF')
    expect((await printing(pages(), documents)).printed).toEqual(['print/quay-binder.pdf'])
    expect(hash(dist('print', 'quay-binder.pdf'))).toBe(good)
  })

  it('remembers a print that was only carried over meanwhile', async () => {
    await printing(pages(), documents)
    await withStage(dist(), stage => {
      for (const file of pages()) stage.write(file)
      stage.keep(['print/*'])
    })
    expect((await printing(pages(), documents)).printed).toEqual([])
  })

  it('goes on past a document that cannot be printed, names it, and leaves its last print', async () => {
    await printing(pages(), documents)
    const good = hash(dist('print', 'quay-binder.pdf'))
    const broken = [css('black'), page('quay', 'Quay', '<a href="#nowhere">x</a>'), page('roof', 'Roof garden')]
    const report = await printing(broken, documents)
    expect(report.printed).toEqual(['print/roof-binder.pdf'])
    expect(report.failed).toEqual([{ pdf: 'print/quay-binder.pdf', reason: expect.stringContaining('"#nowhere"') }])
    expect(hash(dist('print', 'quay-binder.pdf'))).toBe(good)
    expect((await printing(broken, documents)).failed).toHaveLength(1)
  })

  it('without a browser writes the pages all the same, keeps the last prints, and says where it looked', async () => {
    await printing(pages(), documents)
    process.env.UNDERLID_BROWSER = 'none'
    const report = await printing(pages({ quay: 'Changed' }), documents)
    expect(report.noBrowser?.join(' ')).toContain('UNDERLID_BROWSER')
    expect(report.printed).toEqual([])
    expect(filesIn(dist())['office/quay/binder.html']).toContain('Changed')
    expect(Object.keys(filesIn(dist())).filter(path => path.endsWith('.pdf'))).toHaveLength(2)
  })

  it('gives the same bytes again from nothing', async () => {
    await printing(pages(), documents)
    const first = SITES.map(site => hash(dist('print', `${site}-binder.pdf`)))
    await withStage(dist(), () => undefined)
    await printing(pages(), documents.toReversed())
    expect(SITES.map(site => hash(dist('print', `${site}-binder.pdf`)))).toEqual(first)
  })
})
