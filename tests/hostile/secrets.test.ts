import { readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { isMap, parseDocument, visit } from 'yaml'
import { assessFleet, loadOne } from '../../src/build/assess.ts'
import { findingsJson } from '../../src/report/json.ts'
import { PLAIN } from '../../src/report/paint.ts'
import { findingsLines, findingsText } from '../../src/report/text.ts'
import { date } from '../../src/units/date.ts'
import { readFleet } from '../../src/build/read-fleet.ts'
import { binderText } from '../score/binder-text.ts'
import { ON, underlid, workFolder } from '../e2e/support.ts'

const SITE = 'kestrel-cross'
const folder = workFolder([SITE])
const sites = join(folder, 'sites')
let planted = 0

/** A word that stands nowhere else, with a letter that no number has. */
const secret = (): string => `zq${String((planted += 1)).padStart(4, '0')}vault`
const SECRET = /zq\d{4}vault/iu

/** Puts a secret under `private:` of every record of a file that takes one, and keeps what still loads as before. */
function plant(file: string): void {
  const text = readFileSync(file, 'utf8')
  const end = text.indexOf('\n---', 3)
  const document = parseDocument(text.slice(4, end + 1))
  const maps: unknown[] = []
  visit(document, { Map: (_, node) => void maps.push(node) })
  const faults = (): number => {
    const fleet = readFleet(sites)
    const [one] = fleet.sites
    return one ? loadOne(one, fleet).faults.length : NaN
  }
  const write = (): void => writeFileSync(file, `---\n${document.toString()}${text.slice(end + 1)}`)
  if (faults() !== 0) throw new Error(`${file} has faults as it is: one more would not be seen.`)
  for (const map of maps) {
    if (!isMap(map) || map.has('private')) continue
    map.set('private', document.createNode({ code: secret() }))
    write()
    if (faults() === 0) continue
    map.delete('private')
    planted -= 1
    write()
  }
}

function paths(below: string): string[] {
  return (readdirSync(below, { recursive: true }) as string[])
    .map(path => join(below, path))
    .filter(path => statSync(path).isFile())
}

plant(join(sites, SITE, 'site.md'))
for (const path of [...paths(join(sites, SITE, 'visits')), ...paths(join(sites, '_shared'))])
  if (path.endsWith('.md')) plant(path)

/** What a camera may write: place, name of the owner, words. In one and in two bytes a letter. */
function photographWith(words: string): Buffer {
  const photo = readFileSync(join(sites, SITE, 'photos/vb1-open.jpg'))
  const segment = (marker: number, body: Buffer): Buffer => {
    const head = Buffer.from([0xff, marker, 0, 0])
    head.writeUInt16BE(body.length + 2, 2)
    return Buffer.concat([head, body])
  }
  const exif = segment(0xe1, Buffer.from(`http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>${words}</x:xmpmeta>`, 'latin1'))
  return Buffer.concat([
    photo.subarray(0, 2),
    segment(0xfe, Buffer.from(words)),
    exif,
    segment(0xfe, Buffer.from(words, 'utf16le')),
    photo.subarray(2)
  ])
}
writeFileSync(join(sites, SITE, 'photos/vb1-open.jpg'), photographWith(secret()))

/** Secrets in bytes, however they are written there. */
const inBytes = (bytes: Uint8Array): boolean => SECRET.test(Buffer.from(bytes).toString('latin1').replaceAll('\0', ''))

const printed = underlid(['print', '--on', ON, '--log', 'print-log.txt'], folder)
const said: { readonly args: string; readonly text: string }[] = [
  ['check', '--on', ON],
  ['check', '--on', ON, '--format', 'json'],
  ['check', '--on', ON, '--format', 'sarif'],
  ['due', '--on', ON, '--format', 'csv'],
  ['due', '--on', ON, '--format', 'ics'],
  ['due', '--on', ON, '--format', 'json'],
  ['handover', SITE, '--as-is', '--on', ON],
  ['record', SITE, '--found', 'lid cracked', '--by', 'A. Hand', '--dry-run', '--on', ON]
].map(args => {
  const { out, err } = underlid(args, folder)
  return { args: args.join(' '), text: out + err }
})

describe('secrets in every private place of a site, its visits, its sheets and its photographs', () => {
  it('are planted in many places, and the site is printed all the same', () => {
    expect(planted).toBeGreaterThan(40)
    expect(printed.code, printed.err).toBe(0)
  })

  it('stand in no file of an output: pages, office, tables, calendar, search, prints', async () => {
    const all = paths(join(folder, 'dist'))
    expect(all.filter(path => !path.endsWith('.pdf') && inBytes(readFileSync(path)))).toEqual([])
    for (const path of all.filter(one => one.endsWith('.pdf')))
      expect((await binderText(path)).whole, path).not.toMatch(SECRET)
  })

  it('stand in nothing that a verb says', () => {
    const log = readFileSync(join(folder, 'print-log.txt'), 'utf8')
    expect(log).toContain('printed')
    expect([log, printed.out + printed.err, ...said.map(one => one.text)].filter(text => SECRET.test(text))).toEqual([])
    expect(said.every(one => one.text.length > 20)).toBe(true)
  })

  it('stand in no file of a handover that is meant for all', () => {
    const zips = paths(join(folder, 'dist')).filter(path => path.endsWith('.zip'))
    expect(zips.length, said[6]?.text).toBe(1)
    for (const zip of zips)
      expect(
        Object.entries(unzipSync(readFileSync(zip))).flatMap(([path, bytes]) => (inBytes(bytes) ? [path] : []))
      ).toEqual([])
  })

  it('a private word on a public line is told of without being said again', { timeout: 300_000 }, () => {
    const file = join(sites, SITE, 'site.md')
    const text = readFileSync(file, 'utf8')
    const word = SECRET.exec(text)?.[0] ?? ''
    writeFileSync(file, text.replace('where: north splitter island', `where: north splitter island, ${word}`))
    const runs = ['text', 'json', 'sarif', 'lines'].map(format =>
      underlid(['check', '--on', ON, '--format', format], folder)
    )
    const built = underlid(['build', '--on', ON], folder)
    writeFileSync(file, text)
    expect(built.code).toBe(2)
    expect(runs[0]?.out).toContain('privacy/private-word-public')
    for (const { out, err } of [...runs, built]) expect(out + err).not.toMatch(SECRET)
  })

  it('a file that cannot be understood is told of without what stands in private in it', { timeout: 300_000 }, () => {
    const file = join(sites, SITE, 'site.md')
    const text = readFileSync(file, 'utf8')
    const lines = [`  gate: "${secret()}`, `  gate: @${secret()}`, `  gate: ${secret()}: x`, `  gate: |${secret()}`]
    const said = lines.map(line => {
      writeFileSync(file, text.replace(/^private:\n/mu, `private:\n${line}\n`))
      const { general, sites: assessed } = assessFleet(sites, date(ON))
      const findings = [...general, ...assessed.flatMap(one => one.findings)]
      expect(assessed[0]?.site, line).toBeUndefined()
      return findingsText(findings, PLAIN) + JSON.stringify(findingsJson(findings, date(ON))) + findingsLines(findings)
    })
    const built = underlid(['build', '--on', ON, '--log', 'log.txt'], folder)
    writeFileSync(file, text)
    expect(built.code).toBe(2)
    expect(said.join('\n')).toContain('file/yaml')
    for (const words of [...said, built.out, built.err, readFileSync(join(folder, 'log.txt'), 'utf8')])
      expect(words).not.toMatch(SECRET)
    expect(paths(join(folder, 'dist/data')).filter(path => inBytes(readFileSync(path)))).toEqual([])
  })
})
