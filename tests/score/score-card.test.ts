import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { constants, inflateSync } from 'node:zlib'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { PDFDict, PDFDocument, PDFName } from 'pdf-lib'
import { beforeAll, describe, expect, it } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { ON, PROJECT, underlid, workFolder } from '../e2e/support.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { binderText, squeezed } from './binder-text.ts'
import type { BinderText } from './binder-text.ts'
import { PARTS, REQUIREMENTS } from './requirements.ts'
import { gapsListed, notPrinted, scoreOf } from './scoring.ts'

const SUPPLIED = 'harbour-steps'
const LEAST_OF_SUPPLIED = 240
const DEMO_SITES = readdirSync(join(PROJECT, 'sites'), { withFileTypes: true })
  .filter(entry => entry.isDirectory() && !entry.name.startsWith('_'))
  .map(entry => entry.name)
/** Both units and papers, one box and many. All demo sites: UNDERLID_ALL_SITES=1 npx vitest run tests/score/score-card.test.ts */
const EVERYDAY = [SUPPLIED, 'kestrel-cross', 'mercer-row', 'tansy-yard', 'tinder-street-roof']
const SITES = process.env['UNDERLID_ALL_SITES'] === '1' ? DEMO_SITES : EVERYDAY

/** Where it is installed. */
const HAS_QPDF = spawnSync('qpdf', ['--version']).status === 0

/** Read from what `print` wrote. */
const texts = new Map<string, BinderText>()

describe('the list of an owner at closeout, against the finished binders', () => {
  const folder = workFolder(SITES)

  beforeAll(async () => {
    const { code, err } = underlid(['print', '--binder', '--on', ON], folder)
    if (code !== 0) throw new Error(err)
    for (const site of SITES) texts.set(site, await binderText(join(folder, `dist/print/${site}-binder.pdf`)))
  }, 900_000)

  it('has 126 lines, numbered through, each under a part', () => {
    expect(REQUIREMENTS.map(({ n }) => n)).toEqual(Array.from({ length: 126 }, (_, index) => index + 1))
    expect([...new Set(REQUIREMENTS.map(one => one.part))]).toEqual([...PARTS])
  })

  it('no line is silent on any site', () => {
    const silent = SITES.flatMap(site =>
      scoresOf(site)
        .filter(({ points }) => points === 0)
        .map(({ n, why }) => `${site} ${n} ${why}`)
    )
    expect(silent).toEqual([])
  })

  it(`${SUPPLIED} scores ${LEAST_OF_SUPPLIED} of 252 or more, and prints its data where it does`, () => {
    const text = textOf(SUPPLIED)
    expect(REQUIREMENTS.flatMap(one => notPrinted(one, text).map(lacks => `${one.n} ${lacks}`))).toEqual([])
    expect(total(SUPPLIED)).toBeGreaterThanOrEqual(LEAST_OF_SUPPLIED)
  })

  it('a site with gaps scores less than the one without, so that the table can tell them apart', () => {
    for (const site of SITES.filter(one => one !== SUPPLIED)) expect(total(site), site).toBeLessThan(total(SUPPLIED))
  })

  it('a binder without its training record and its list of gaps is found out', () => {
    const whole = textOf(SUPPLIED)
    const without = new Map([...whole.sections].filter(([title]) => title !== 'Training record'))
    const scores = REQUIREMENTS.map(one => scoreOf(one, { ...whole, sections: without }))
    expect(scores.filter(({ points }) => points === 0).map(({ n }) => n)).toEqual([86, 87, 88])
  })

  it('whatever a section prints as not supplied stands in the list of gaps under its title', () => {
    for (const site of SITES)
      for (const [title, text] of textOf(site).sections) {
        if (
          !/(?<!whatis|”\d)notsupplied/u.test(text) ||
          /^(Contents|What is not supplied|How these|Harbour|Glossary)/u.test(title)
        )
          continue
        if (SECTIONS_ASIDE.test(title) || title === [...textOf(site).sections.keys()][0]) continue
        expect(gapsListed(textOf(site), title), `${site}, ${title}`).not.toEqual([])
      }
  })

  it('every page but the cover bears the data date and the revision', () => {
    for (const site of SITES) {
      const { pageTexts } = textOf(site)
      const bare = pageTexts.flatMap((text, index) =>
        index > 0 && !(text.includes(`dataof${ON}`) && text.includes('revision')) ? [index + 1] : []
      )
      expect(bare, site).toEqual([])
    }
  })

  it('two other programs open every binder, and qpdf where it is installed: as many pages, the same bookmarks, the words of what is bound in', async () => {
    const library = await PDFiumLibrary.init()
    for (const site of SITES) {
      const bytes = new Uint8Array(readFileSync(join(folder, `dist/print/${site}-binder.pdf`)))
      const { bookmarks, pages } = await readPdf(bytes, { bookmarks: true })
      const second = await PDFDocument.load(bytes, { updateMetadata: false })
      expect(second.getPageCount(), site).toBe(pages)
      expect(outlineCount(second), site).toBe(bookmarks.length)
      expect(figuresWithoutWords(second), site).toBe(0)
      const third = await library.loadDocument(bytes)
      expect(third.getPageCount(), site).toBe(pages)
      if (site === SUPPLIED) {
        const text = squeezed([...third.pages()].map(page => page.getText()).join(''))
        for (const words of ['RECORD DRAWING', 'Pressure test of the main', 'Irrigation audit with catch cans'])
          expect(text).toContain(squeezed(words))
      }
      third.destroy()
      if (HAS_QPDF) expect(qpdfFaults(join(folder, `dist/print/${site}-binder.pdf`)), site).toBe('')
    }
    library.destroy()
  }, 300_000)

  it('the fully supplied binder, with twelve photographs, stays under 8 MB', () => {
    expect(textOf(SUPPLIED).pageTexts.length).toBeGreaterThan(60)
    expect(statSync(join(folder, `dist/print/${SUPPLIED}-binder.pdf`)).size).toBeLessThan(8 * 1024 * 1024)
  })

  it('lines about form name a test that is there', () => {
    for (const { n, proved = [] } of REQUIREMENTS)
      for (const { file, title } of proved) {
        const path = join(PROJECT, file)
        expect(existsSync(path) && readFileSync(path, 'utf8').includes(`'${title}'`), `${n}: ${file}`).toBe(true)
      }
  })

  it('says the score of each part', () => {
    const lines = [['part', 'of', ...SITES].join('\t')]
    for (const part of PARTS) {
      const own = REQUIREMENTS.filter(one => one.part === part)
      lines.push([part, own.length * 2, ...SITES.map(site => partScore(site, part))].join('\t'))
    }
    lines.push(['all', 252, ...SITES.map(total)].join('\t'))
    process.stdout.write(`${lines.join('\n')}\n`)
    expect(lines).toHaveLength(PARTS.length + 2)
  })
})

/** What qpdf says of a file that is not sound; nothing of one that is. */
/** What qpdf says where its own buffer is full just as a block of its input ends: 65,536 bytes out of 10,240. */
const AT_ITS_EDGE = /\(offset (\d+)\): input stream is complete but output may still be valid$/u

/** Any warning counts, but for the one that is about its buffer and no fault of a stream that another reader finds whole. */
function qpdfFaults(path: string): string {
  const { status, stdout, stderr } = spawnSync('qpdf', ['--check', path], { encoding: 'utf8' })
  if (status === 0) return ''
  const warnings = `${stdout}${stderr}`.split('\n').filter(line => line.startsWith('WARNING'))
  const isOfTheBuffer = (line: string): boolean => {
    const offset = AT_ITS_EDGE.exec(line)?.[1]
    return offset !== undefined && fillsItsBuffer(readFileSync(path), Number(offset))
  }
  return warnings.length > 0 && warnings.every(isOfTheBuffer) ? '' : `${stdout}${stderr}`
}

/** True of a stream that another reader reads to its end, and whose first 10,240 bytes give 65,536. */
function fillsItsBuffer(bytes: Buffer, offset: number): boolean {
  const packed = bytes.subarray(offset, bytes.indexOf('\nendstream', offset))
  const { engine } = inflateSync(packed, { info: true }) as unknown as { readonly engine: { bytesWritten: number } }
  const first = inflateSync(packed.subarray(0, 10_240), { finishFlush: constants.Z_SYNC_FLUSH })
  return engine.bytesWritten === packed.length && first.length % 65_536 === 0
}

/** Figures of the structure that say nothing to whoever does not see them. ISO 32000-1:2008, 14.9.3. */
function figuresWithoutWords(document: PDFDocument): number {
  const figures = document.context
    .enumerateIndirectObjects()
    .flatMap(([, one]) => (one instanceof PDFDict && one.lookup(PDFName.of('S')) === PDFName.of('Figure') ? [one] : []))
  expect(figures.length).toBeGreaterThan(0)
  return figures.filter(one => !one.has(PDFName.of('Alt'))).length
}

/** Entries of the outline, counted by following it. ISO 32000-1:2008, 12.3.3. */
function outlineCount(document: PDFDocument): number {
  const at = (node: PDFDict | undefined, key: string) => node?.lookupMaybe(PDFName.of(key), PDFDict)
  const below = (node: PDFDict | undefined): number => {
    let total = 0
    for (let one = at(node, 'First'); one; one = at(one, 'Next')) total += 1 + below(one)
    return total
  }
  return below(document.catalog.lookupMaybe(PDFName.of('Outlines'), PDFDict))
}

/** Sections whose "not supplied" is of the plan, not of what is handed over. */
const SECTIONS_ASIDE = /^(Programs that would|Open items|Index)/u

function textOf(site: string): BinderText {
  const text = texts.get(site)
  if (!text) throw new Error(`no binder of ${site}`)
  return text
}

const scoresOf = (site: string) => REQUIREMENTS.map(one => scoreOf(one, textOf(site)))
const total = (site: string): number => sum(scoresOf(site).map(({ points }) => points))

function partScore(site: string, part: string): number {
  const own = new Set(REQUIREMENTS.filter(one => one.part === part).map(({ n }) => n))
  return sum(
    scoresOf(site)
      .filter(({ n }) => own.has(n))
      .map(({ points }) => points)
  )
}
