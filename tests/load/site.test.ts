import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import type { SiteInput } from '../support/base-site.ts'
import { BASE_FILE, baseSite } from '../support/base-site.ts'

const here = dirname(fileURLToPath(import.meta.url))
const text = (file: string) => readFileSync(join(here, file), 'utf8')
const codes = (input: SiteInput) => loadSite(input).faults.map(fault => fault.code)

const VISITS = [
  ['2026-04-10-route.md', 'on: 2026-04-10\nby: A. Hand\nbatteries: [{ controller: K1, rest: 9.4 V }]\n'],
  ['2025-11-02-close.md', 'on: 2025-11-02\nreason: season\nfound: ["VB2 under leaves"]\n'],
  ['2026-04-10-call.md', 'on: 2026-04-10\nopen: ["Z2 opens slowly"]\n']
] as const

describe('the base site of the tests', () => {
  it('loads without a fault', () => {
    const { faults, site } = loadSite(baseSite())
    expect(faults).toEqual([])
    expect(site?.stations.map(station => station.zone)).toEqual(['Z1', 'Z2'])
    expect(site?.controllers[0]?.sheet?.title).toBe('Plain four-station controller')
  })

  it('takes other keys in place of its own, and loses one that is left blank', () => {
    const { site } = loadSite(baseSite('title: Other\nseason: \n'))
    expect([site?.title, site?.season, site?.units]).toEqual(['Other', undefined, 'metric'])
  })
})

describe('the example of the design', () => {
  const input = (sheet: readonly string[]): SiteInput => ({
    id: 'kestrel-cross',
    files: ['site.md', 'visits/2026-05-04-route.md'].map(file => ({
      file: `sites/kestrel-cross/${file}`,
      text: text(`example/${file}`)
    })),
    shared: sheet.map(keys => ({ file: 'sites/_shared/sheets/four-station-in-box.md', text: `---\n${keys}---\n` }))
  })

  it('is understood; only what it leaves out is pointed to in vain', () => {
    const { site, faults } = loadSite(input(['title: Four-station\n']))
    expect(faults.map(({ code, details, fatal }) => [code, details['name'], fatal])).toEqual([
      ['file/dangling-reference', 'K1/1', false],
      ['file/dangling-reference', 'K1/2', false],
      ['file/dangling-reference', 'K1/1', false]
    ])
    expect(site?.location?.timeZone).toBe('Europe/London')
    expect(site?.stations[0]).toMatchObject({
      id: 'K1/3',
      controller: 'K1',
      number: 3,
      zone: 'Z3',
      slope: '1 %',
      plants: { factor: 0.5 },
      wire: [{ size: { kind: 'area', mm2: 0.75 }, conductor: 'solid', coating: 'plain', colour: 'red / white' }],
      valves: [{ coil: 'DC latching 2-wire', box: 'VB1', size: '1 in' }]
    })
    expect(site?.controllers[0]?.programs[0]).toMatchObject({
      id: 'A',
      days: { kind: 'every-n-days', every: 2, from: '2026-04-02' },
      starts: [1390],
      stations: [
        { number: 1, runTime: { cycles: 1, cycleS: 1500, soakS: 0 } },
        { number: 2, runTime: { cycles: 1, cycleS: 1500, soakS: 0 } },
        { number: 3, runTime: { cycles: 2, cycleS: 360, soakS: 1800 } }
      ]
    })
    expect(site?.visits[0]).toMatchObject({
      on: '2026-05-04',
      found: ['Z3 opens slowly'],
      open: ['Z3 coil to be swapped']
    })
    expect(site?.privateWords.map(word => [word.label, word.text])).toEqual([
      ['keys', 'depot locker 14, code 7719'],
      ['phone', '…']
    ])
  })

  it('is told of a sheet that is not there, and is built all the same', () => {
    const { site, faults } = loadSite(input([]))
    expect(faults.find(fault => fault.details['kind'] === 'product sheet')?.place).toMatchObject({
      line: 29,
      column: 12
    })
    expect(site?.controllers[0]?.sheetPath).toBe('_shared/sheets/four-station-in-box.md')
    expect(site?.controllers[0]?.sheet).toBeUndefined()
  })
})

describe('what is left out', () => {
  const bare = (keys: string): SiteInput => ({
    id: 'bare',
    files: [{ file: 'sites/bare/site.md', text: `---\n${keys}---\n` }],
    shared: []
  })

  it('is nothing, or what the manual says it is', () => {
    const { site, faults } = loadSite(bare('title: Bare\nunits: us\n'))
    expect(faults).toEqual([])
    expect(site).toMatchObject({
      paper: 'Letter',
      status: 'in-service',
      place: 'other',
      boxes: [],
      stations: [],
      visits: []
    })
    expect(Object.keys(site ?? {})).not.toContain('season')
    expect(loadSite(bare('title: Bare\nunits: metric\n')).site?.paper).toBe('A4')
  })

  it('may be left blank instead', () => {
    const keys = 'title: Bare\nunits: us\nseason:\nboxes:\ncontacts:\n  - { role: owner, phone: }\n'
    const { site, faults } = loadSite(bare(keys))
    expect(faults).toEqual([])
    expect(site?.boxes).toEqual([])
    expect(site?.contacts[0]).not.toHaveProperty('phone')
  })

  it('as the whole file is a fault', () => {
    const { faults, site } = loadSite({ id: 'empty', files: [], shared: [] })
    expect(faults.map(fault => [fault.code, fault.place.file, fault.fatal])).toEqual([
      ['file/front-matter', 'sites/empty/site.md', true]
    ])
    expect(site).toBeUndefined()
  })
})

describe('faults', () => {
  it('of the site file, of visits and of shared files come all at once, by file and line', () => {
    const input = baseSite('season: { from: 04-01, to: 15-10 }\npaper: A5\n', {
      visits: [['2026-04-10.md', 'on: 2026-04-31\n']],
      sheet: 'stations: four\n'
    })
    const { faults, site } = loadSite(input)
    expect(faults.map(({ place, code }) => [place.file, code])).toEqual([
      ['sites/_shared/sheets/plain.md', 'file/not-understood'],
      [BASE_FILE, 'file/date'],
      [BASE_FILE, 'file/not-one-of'],
      ['sites/base/visits/2026-04-10.md', 'file/date']
    ])
    expect(site).toBeUndefined()
  })

  it('of references and names do not stop a site; a station without its controller does', () => {
    const twice = 'boxes:\n  - { id: VB1 }\n  - { id: VB2 }\n  - { id: VB2 }\n'
    expect([codes(baseSite(twice)), loadSite(baseSite(twice)).site?.boxes.length]).toEqual([['file/duplicate-id'], 3])
    const lost = 'stations:\n  - { id: K1/1 }\n  - { id: K1/2 }\n  - { id: K9/1 }\n'
    expect([codes(baseSite(lost)), loadSite(baseSite(lost)).site]).toEqual([['file/dangling-reference'], undefined])
  })

  it('of names and of values come together', () => {
    expect(codes(baseSite('boxes:\n  - { id: VB1 }\n  - { id: VB2, ties: one }\n  - { id: VB2 }\n')).sort()).toEqual([
      'file/duplicate-id',
      'file/wrong-shape'
    ])
  })

  it('know the first of two that share a name', () => {
    const { faults } = loadSite(baseSite('sensors:\n  - { id: RS1, kind: rain }\n  - { id: RS1, kind: frost }\n'))
    const [fault] = faults
    expect(fault?.related?.[0]?.place.line).toBe((fault?.place.line ?? 0) - 1)
  })
})

describe('the order of files', () => {
  it('never changes what is loaded', () => {
    const input = baseSite('paper: A5\n', { visits: [...VISITS, ['2026-05-01.md', 'on: never\n']] })
    const good = baseSite('', { visits: VISITS })
    const plain = (one: SiteInput) => {
      const { id, faults, site } = loadSite(one)
      return JSON.stringify({ id, faults, site })
    }
    const any = (one: SiteInput) => fc.shuffledSubarray([...one.files], { minLength: one.files.length })
    fc.assert(
      fc.property(any(good), any(input), (goodFiles, badFiles) => {
        expect(plain({ ...good, files: goodFiles })).toBe(plain(good))
        expect(plain({ ...input, files: badFiles })).toBe(plain(input))
      }),
      { numRuns: 20 }
    )
  })

  it('of visits is by day, then by file', () => {
    const { site } = loadSite(baseSite('', { visits: VISITS }))
    expect(site?.visits.map(visit => visit.at.file.split('/').at(-1))).toEqual([
      '2025-11-02-close.md',
      '2026-04-10-call.md',
      '2026-04-10-route.md'
    ])
  })
})

describe('private words', () => {
  it('are found under every private key, in every file, at any depth, each under its nearest key', () => {
    const { site } = loadSite(
      baseSite(
        `private: { gate: { code: 0391, hours: [06:00, 22:00] }, note: "" }
contacts:
  - { role: owner, phone: "1", email: a@example.org }
  - { role: maintainer, phone: "2", public: yes, private: { mobile: 07700 900123 } }
boxes:
  - { id: VB1, private: { lock: 2608 } }
  - { id: VB2 }
`,
        {
          visits: [['2026-04-10.md', 'on: 2026-04-10\nprivate: { said: "ask for Jo" }\n']],
          sheet: 'private: { price: 200 }\n'
        }
      )
    )
    expect(site?.privateWords.map(({ label, text: word }) => `${label} ${word}`)).toEqual([
      'code 0391',
      'hours 06:00',
      'hours 22:00',
      'mobile 07700 900123',
      'lock 2608',
      'said ask for Jo',
      'price 200',
      'phone 1',
      'email a@example.org'
    ])
  })

  it('are none where nothing is private', () => {
    expect(loadSite(baseSite()).site?.privateWords).toEqual([])
  })
})

describe('shared files', () => {
  it('give a climate, rules and the company', () => {
    const { site, faults } = loadSite(
      baseSite('climate: _shared/climates/north.md\nwatering-rules: [_shared/rules/city.md, { authority: owner }]\n', {
        shared: [
          { file: 'sites/_shared/climates/north.md', text: '---\ntitle: North\nreference-et: { Jul: 4.6 in }\n---\n' },
          {
            file: 'sites/_shared/rules/city.md',
            text: '---\ntitle: City\nwindow: 10:00 pm-6:00 am\ndays: even dates\n---\n'
          },
          { file: 'sites/_shared/company.md', text: '---\nname: Plain Gardens\n---\n' }
        ]
      })
    )
    expect(faults).toEqual([])
    expect(site?.climate).toMatchObject({ name: 'North', referenceEt: { Jul: { value: 4.6, unit: 'in' } } })
    expect(site?.wateringRules).toMatchObject([
      { authority: 'City', windows: [{ from: 1320, to: 360 }], days: { kind: 'even-dates' } },
      { authority: 'owner', windows: [] }
    ])
    expect(site?.company?.name).toBe('Plain Gardens')
  })

  it.each([
    ['HTTPS://EXAMPLE.ORG', []],
    ['https://tags.example.org:8443/', []],
    ['http://192.0.2.7/WATER', []],
    ['www.example.org', ['file/not-understood', 'public-address: "https://www.example.org"']],
    ['https://example.org/water', ['file/not-understood', 'public-address: "https://example.org/WATER"']],
    ['https://example.org/?b=', ['file/not-understood', undefined]],
    ['https://example org', ['file/not-understood', undefined]],
    ['ftp://example.org', ['file/not-understood', undefined]]
  ])('take %s for the address that codes lead to, or tell of it before a label is printed', (address, expected) => {
    const text = `---\nname: Plain Gardens\npublic-address: ${address}\n---\n`
    const { faults } = loadSite(baseSite('', { shared: [{ file: 'sites/_shared/company.md', text }] }))
    expect(faults.flatMap(({ code, details }) => [code, details['corrected']])).toEqual(expected)
  })

  it('with a fault stop each site that needs them, and no other', () => {
    const broken = { file: 'sites/_shared/climates/north.md', text: '---\nreference-et: { Jul: 118 }\n---\n' }
    expect(codes(baseSite('climate: _shared/climates/north.md\n', { shared: [broken] }))).toEqual(['file/unit-missing'])
    expect(codes(baseSite('', { shared: [broken] }))).toEqual([])
  })
})
