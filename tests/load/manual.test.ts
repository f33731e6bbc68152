import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readFrontMatter } from '../../src/load/front-matter.ts'
import { readAs } from '../../src/load/read-as.ts'
import { loadSite } from '../../src/load/site.ts'
import { parse } from 'yaml'
import { keyRows } from '../../src/load/key-list.ts'
import { LISTS, MANUAL, manualFiles, manualMadeAnew } from './manual.ts'

const [SITE = '', VISIT = '', SHEET = '', CLIMATE = '', RULE = '', COMPANY = ''] = manualFiles()

const loaded = loadSite({
  id: 'kestrel-cross',
  files: [
    { file: 'sites/kestrel-cross/site.md', text: SITE },
    { file: 'sites/kestrel-cross/visits/2026-05-04-route.md', text: VISIT }
  ],
  shared: [
    { file: 'sites/_shared/sheets/four-station-in-box.md', text: SHEET },
    { file: 'sites/_shared/climates/north-coast.md', text: CLIMATE },
    { file: 'sites/_shared/company.md', text: COMPANY }
  ]
})

describe('the manual of the site file', () => {
  it('lists every key that is read, with what it is for and an example; UPDATE_MANUAL=1 writes the lists anew', () => {
    const text = readFileSync(MANUAL, 'utf8')
    if (process.env['UPDATE_MANUAL'] === '1') writeFileSync(MANUAL, manualMadeAnew(text))
    expect(readFileSync(MANUAL, 'utf8')).toBe(manualMadeAnew(text))
    for (const name of Object.keys(LISTS)) expect(text).toContain(`<!-- keys: ${name} -->\n\n| key |`)
  })

  it('shows a site, a visit, a sheet, a climate and a firm that load without a fault', () => {
    expect(loaded.faults).toEqual([])
    expect(loaded.site?.title).toBe('Kestrel Cross Roundabout')
    expect(loaded.site?.climate?.referenceEt?.Jul).toMatchObject({ dimension: 'length', value: 118, unit: 'mm' })
    expect(loaded.site?.controllers[0]?.sheet?.pulseVolts?.si).toBe(8.5)
    expect(loaded.site?.visits[0]?.batteries[0]?.underLoad?.si).toBe(8.9)
    expect(loaded.site?.company?.publicAddress).toBe('HTTPS://EXAMPLE.ORG')
    expect(loaded.site?.prose.map(section => section.heading)).toEqual(['Getting there', 'What is odd here'])
  })

  it('shows a watering rule that loads without a fault', () => {
    const rule = LISTS['watering-rule']
    if (!rule) throw new Error('no list of the keys of a watering rule')
    const read = readAs(rule, readFrontMatter({ file: 'sites/_shared/rules/port-sable.md', text: RULE }))
    expect(read.faults).toEqual([])
  })

  it.each(Object.entries(LISTS))('%s: the example of each key is taken by that key', (_, schema) => {
    for (const { path, example } of keyRows(schema)) {
      const value: unknown = parse(example, { version: '1.2' })
      const faults = schema.safeParse(nested(path, value)).error?.issues ?? []
      const here = faults.filter(issue => samePath(issue.path, path))
      expect(here, `${path}: ${example}`).toEqual([])
    }
  })
})

/** `stations[].valve.size` with a value, as plain data: { stations: [{ valve: { size: value } }] }. */
function nested(path: string, value: unknown): unknown {
  const [, key = '', list = '', rest = ''] = /^([^.[]+)(\[\])?\.?(.*)$/u.exec(path) ?? []
  const inner = rest === '' ? value : nested(rest, value)
  return { [key]: list === '' || rest === '' ? inner : [inner] }
}

function samePath(found: readonly PropertyKey[], path: string): boolean {
  return found.filter(step => typeof step === 'string').join('.') === path.replaceAll('[]', '')
}
