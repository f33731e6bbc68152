import { cpSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { parseDocument } from 'yaml'
import type { Document } from 'yaml'
import type { z } from 'zod'
import { assessFleet } from '../../src/build/assess.ts'
import { climateFile } from '../../src/load/schema/climate.ts'
import { company } from '../../src/load/schema/company.ts'
import { productSheet } from '../../src/load/schema/product-sheet.ts'
import { site } from '../../src/load/schema/site.ts'
import { visit } from '../../src/load/schema/visit.ts'
import { wateringRuleFile } from '../../src/load/schema/watering-rule.ts'
import { findingsJson } from '../../src/report/json.ts'
import { PLAIN } from '../../src/report/paint.ts'
import { findingsLines, findingsText } from '../../src/report/text.ts'
import { date } from '../../src/units/date.ts'
import { binderText } from '../score/binder-text.ts'
import { ON, underlid, workFolder } from '../e2e/support.ts'
import { allAt, fill, privateKeys, privatePlaces } from './private-places.ts'

const SITE = 'kestrel-cross'
/** The same site with every record that the schema knows, so that a secret stands in each; without tags, which are the other's. */
const WHOLE = 'kestrel-whole'
const folder = workFolder([SITE])
const sites = join(folder, 'sites')
cpSync(join(sites, SITE), join(sites, WHOLE), { recursive: true })
let planted = 0

/** A word that stands nowhere else, with a letter that no number has. */
const secret = (): string => `zq${String((planted += 1)).padStart(4, '0')}vault`
const SECRET = /zq\d{4}vault/iu

type Files = readonly { readonly path: string; readonly schema: z.ZodType; readonly whole?: true }[]

function paths(below: string): string[] {
  return (readdirSync(below, { recursive: true }) as string[])
    .map(path => join(below, path))
    .filter(path => statSync(path).isFile())
}

const RULE = '_shared/rules/town.md'
mkdirSync(join(sites, '_shared/rules'))
writeFileSync(join(sites, RULE), '---\nauthority: Testwick Water\nwindow: 22:00-06:00\n---\n')

const markdown = (below: string, schema: z.ZodType, more: { readonly whole?: true } = {}): Files =>
  paths(join(sites, below)).flatMap(path => (path.endsWith('.md') ? [{ path, schema, ...more }] : []))
const FILES: Files = [
  { path: join(sites, SITE, 'site.md'), schema: site },
  { path: join(sites, WHOLE, 'site.md'), schema: site, whole: true },
  ...markdown(`${SITE}/visits`, visit),
  ...markdown(`${WHOLE}/visits`, visit, { whole: true }),
  ...markdown('_shared/sheets', productSheet),
  ...markdown('_shared/climates', climateFile, { whole: true }),
  { path: join(sites, RULE), schema: wateringRuleFile },
  { path: join(sites, '_shared/company.md'), schema: company }
]

function edited(path: string, change: (document: Document) => void): void {
  const text = readFileSync(path, 'utf8')
  const end = text.indexOf('\n---', 3)
  const document = parseDocument(text.slice(4, end + 1))
  change(document)
  writeFileSync(path, `---\n${document.toString({ lineWidth: 0 })}${text.slice(end + 1)}`)
}

/** Records of which a file of each kind has had a secret put below `private:`, by the schema's paths. */
const carrying = new Map<z.ZodType, Set<string>>()

for (const { path, schema, whole } of FILES)
  edited(path, document => {
    const places = privatePlaces(schema)
    if (whole) for (const place of places) fill(document, place)
    if (whole && schema === site) {
      document.addIn(['watering-rules'], RULE)
      for (const at of allAt(document, ['boxes', '[]'])) document.deleteIn([...at, 'tag'])
    }
    const carriers = carrying.get(schema) ?? new Set()
    carrying.set(schema, carriers)
    for (const place of places)
      for (const at of allAt(document, place.steps)) {
        document.setIn([...at, 'private'], document.createNode({ code: secret() }))
        carriers.add(place.path)
      }
    for (const key of privateKeys(schema)) {
      const steps = key.replaceAll('[]', '.[]').split('.')
      for (const at of allAt(document, steps.slice(0, -1)))
        if (!document.getIn([...at, 'public'])) document.setIn([...at, steps.at(-1)], secret())
    }
  })

const assessed = assessFleet(sites, date(ON))

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

const built = underlid(['build', '--on', ON, '--log', 'build-log.txt'], folder)
const printed = underlid(['print', SITE, '--on', ON, '--log', 'print-log.txt'], folder)
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
  it('are planted in every record that the schema lets have private words, and the sites are read and printed all the same', () => {
    for (const [schema, carriers] of carrying)
      expect(privatePlaces(schema).flatMap(({ path }) => (carriers.has(path) ? [] : [path]))).toEqual([])
    expect(privateKeys(site)).toEqual(['contacts[].phone', 'contacts[].email'])
    const { general, sites: both } = assessed
    expect([...general, ...both.flatMap(one => one.findings)].filter(one => one.code.startsWith('file/'))).toEqual([])
    for (const one of both)
      expect(one.site?.privateWords.filter(word => SECRET.test(word.text)).length).toBeGreaterThan(80)
    expect(planted).toBeGreaterThan(200)
    expect([built.code, printed.code], built.err + printed.err).toEqual([0, 0])
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
    expect(
      [log, built.out + built.err, printed.out + printed.err, ...said.map(one => one.text)].filter(text =>
        SECRET.test(text)
      )
    ).toEqual([])
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
