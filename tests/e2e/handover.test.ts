import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join, posix } from 'node:path'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { strFromU8, unzipSync } from 'fflate'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import { otherObjects } from '../support/other-objects.ts'
import { ON, PROJECT, underlid, workFolder } from './support.ts'

const ZIP = (site: string): string => `dist/handover/${site}-${ON}.zip`
const isText = (path: string): boolean => /\.(?:html|txt|md|csv|json|geojson|js)$/u.test(path)

/** Words that the demo site keeps private. */
const PRIVATE = ['5520']

/** Files of two packages that are not the same, so that a failure says where to look. */
async function others(one: Uint8Array, two: Uint8Array): Promise<string[]> {
  const [a, b] = [unzipSync(one), unzipSync(two)]
  const bytes = (of: typeof a, path: string): Uint8Array => of[path] ?? Buffer.of()
  const paths = [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(
    path => Buffer.compare(bytes(a, path), bytes(b, path)) !== 0
  )
  return Promise.all(
    paths.map(async path =>
      path.endsWith('.pdf') ? `${path}: ${await otherObjects(bytes(a, path), bytes(b, path))}` : path
    )
  )
}

describe('underlid handover', () => {
  const folder = workFolder(['harbour-steps', 'kestrel-cross'])
  let files: Record<string, Uint8Array> = {}
  const textOf = (path: string): string => strFromU8(files[path] ?? new Uint8Array())

  beforeAll(() => {
    const { code, err } = underlid(['handover', 'harbour-steps', '--on', ON], folder)
    if (code !== 0) throw new Error(err)
    files = unzipSync(readFileSync(join(folder, ZIP('harbour-steps'))))
  }, 300_000)

  it('holds binder, labels, pages, data, attachments, photographs, open items and the manifest', () => {
    const names = Object.keys(files)
    for (const name of [
      'index.html',
      'README.txt',
      'print/harbour-steps-binder.pdf',
      'print/harbour-steps-labels.pdf',
      'office/harbour-steps/binder.html',
      'office/harbour-steps/attachments/record-drawing.pdf',
      'office/harbour-steps/photos/meter.jpg',
      'public/B/ACJ5E6M/index.html',
      'data/sites/harbour-steps/site.md',
      'data/sites/harbour-steps/visits/2026-04-27-meter.md',
      'data/sites/_shared/sheets/six-station-post.md',
      'data/harbour-steps.json',
      'data/wires.csv',
      'data/zones.csv',
      'data/boxes.geojson',
      'open-items.txt',
      'open-items.html',
      'MANIFEST-SHA256.txt'
    ])
      expect(names, name).toContain(name)
    expect(names.some(name => name.includes('restricted'))).toBe(false)
    expect(names.some(name => name.includes('kestrel'))).toBe(false)
  })

  it('names the sum of every file but its own, as sha256sum reads it', () => {
    const lines = textOf('MANIFEST-SHA256.txt').trimEnd().split('\n')
    const listed = lines.map(line => /^([0-9a-f]{64}) {2}(.+)$/u.exec(line)?.slice(1) ?? [])
    expect(listed.map(([, name]) => name)).toEqual(
      Object.keys(files)
        .filter(name => name !== 'MANIFEST-SHA256.txt')
        .sort()
    )
    for (const [sum, name = ''] of listed)
      expect(
        createHash('sha256')
          .update(files[name] ?? new Uint8Array())
          .digest('hex'),
        name
      ).toBe(sum)
    for (const [name, bytes] of Object.entries(files)) {
      const path = join(folder, 'opened', name)
      mkdirSync(dirname(path), { recursive: true })
      writeFileSync(path, bytes)
    }
    const { status } = spawnSync('sha256sum', ['-c', '--quiet', 'MANIFEST-SHA256.txt'], { cwd: join(folder, 'opened') })
    expect(status).toBe(0)
  })

  it('every link between its pages leads to a file that is in it', () => {
    const dead = Object.keys(files)
      .filter(path => path.endsWith('.html'))
      .flatMap(path =>
        [...textOf(path).matchAll(/\s(?:href|src)="([^"#?]+)[^"]*"/gu)]
          .map(([, target = '']) => target)
          .filter(target => !/^(?:[a-z]+:|\/\/)/iu.test(target))
          .filter(target => !(posix.normalize(posix.join(posix.dirname(path), target)) in files))
          .map(target => `${path} → ${target}`)
      )
    expect(dead).toEqual([])
    expect(textOf('office/harbour-steps/binder.html')).toContain('href="attachments/audit.pdf#page=1"')
  })

  it('opens with a page that says of which day it is and leads to prints, pages and open items; a site page leads back to it', () => {
    const start = textOf('index.html')
    expect(start).toContain(`Handed over on ${ON}.`)
    const links = [...start.matchAll(/href="([^"]+)"/gu)].map(([, target]) => target)
    expect(links).toEqual([
      'print/harbour-steps-binder.pdf',
      'print/harbour-steps-labels.pdf',
      'office/harbour-steps/index.html',
      'open-items.html'
    ])
    expect(textOf('office/harbour-steps/index.html')).toContain('<a href="../../index.html">')
  })

  it('holds no private word in any file, the text of the PDFs included', async () => {
    const held = Object.keys(files).filter(path => isText(path) && PRIVATE.some(word => textOf(path).includes(word)))
    expect(held).toEqual([])
    const library = await PDFiumLibrary.init()
    for (const name of ['binder', 'labels']) {
      const print = await library.loadDocument(files[`print/harbour-steps-${name}.pdf`] ?? new Uint8Array())
      const texts = [...print.pages()].map(page => page.getText())
      expect(texts.join('')).toContain('Harbour')
      // Figures beside each other in a table are not a code.
      expect(texts.flatMap((text, index) => (/(?<![\d.])5520(?![\d.])/u.test(text) ? [index + 1] : []))).toEqual([])
      print.destroy()
    }
    library.destroy()
    expect(textOf('data/sites/harbour-steps/site.md')).not.toMatch(/private:/u)
  })

  it('its site file is read as one, with the same boxes and stations', () => {
    const source = (path: string, file: string) => ({ file, text: textOf(path) })
    const { faults, site } = loadSite({
      id: 'harbour-steps',
      files: [source('data/sites/harbour-steps/site.md', 'sites/harbour-steps/site.md')],
      shared: Object.keys(files)
        .filter(path => path.startsWith('data/sites/_shared/'))
        .map(path => source(path, path.slice('data/'.length)))
    })
    expect(faults).toEqual([])
    expect(site?.boxes.map(box => box.id)).toEqual(['HB1', 'HB2', 'HB3'])
    expect(site?.privateWords).toEqual([])
  })

  it('has the same bytes again, in another folder and in another time zone', async () => {
    const first = readFileSync(join(folder, ZIP('harbour-steps')))
    for (const zone of ['Pacific/Auckland', 'America/Los_Angeles']) {
      const args = [
        join(PROJECT, 'setup/underlid.mjs'),
        'handover',
        'harbour-steps',
        '--on',
        ON,
        '--out',
        `out-${zone.slice(0, 4)}`
      ]
      execFileSync(process.execPath, args, { cwd: folder, env: { ...process.env, TZ: zone }, stdio: 'pipe' })
      const again = readFileSync(join(folder, `out-${zone.slice(0, 4)}`, ZIP('harbour-steps').slice('dist/'.length)))
      expect(await others(again, first), zone).toEqual([])
      expect(again.equals(first), zone).toBe(true)
    }
  }, 300_000)

  it('is refused with exit 1 while errors are open, and names them; --as-is lists them inside', () => {
    const refused = underlid(['handover', 'kestrel-cross', '--on', ON], folder)
    expect(refused.code).toBe(1)
    expect(refused.err).toContain('power/battery-overdue')
    expect(refused.err).toContain('--as-is')
    const given = underlid(['handover', 'kestrel-cross', '--on', ON, '--as-is'], folder)
    expect(given.code).toBe(0)
    const inside = unzipSync(readFileSync(join(folder, ZIP('kestrel-cross'))))
    const open = strFromU8(inside['open-items.txt'] ?? new Uint8Array())
    expect(open).toContain('ERROR power/battery-overdue')
    expect(open).not.toMatch(/ $/mu)
    const words = [...open.matchAll(/^\d+\. ([A-Z]+)/gmu)].map(([, word]) => word)
    expect(words.slice(0, 3)).toEqual(['ERROR', 'ERROR', 'WARNING'])
    expect(open).toContain('Installer: ____')
    expect(strFromU8(inside['data/sites/kestrel-cross/site.md'] ?? new Uint8Array())).not.toContain('7719')
  }, 300_000)

  it('--with-restricted puts the sheet of codes in, and only then', () => {
    const { code } = underlid(['handover', 'harbour-steps', '--on', ON, '--with-restricted', '--out', 'with'], folder)
    expect(code).toBe(0)
    const inside = unzipSync(readFileSync(join(folder, 'with', ZIP('harbour-steps').slice('dist/'.length))))
    expect(Object.keys(inside)).toContain('print/harbour-steps-restricted.pdf')
    expect(strFromU8(inside['office/harbour-steps/restricted.html'] ?? new Uint8Array())).toContain('5520')
  }, 300_000)

  it('a site that is not there is a refusal with exit 2', () => {
    const { code, err } = underlid(['handover', 'nowhere', '--on', ON], folder)
    expect(code).toBe(2)
    expect(err).toContain('nowhere')
  })
})
