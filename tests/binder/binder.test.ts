import { describe, expect, it } from 'vitest'
import type { Block, Section, TableBlock } from '../../src/binder/blocks.ts'
import type { PageContext } from '../../src/binder/context.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { runChecks } from '../../src/checks/run.ts'
import { loadRegister } from '../../src/load/register.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseRegister, baseSite } from '../support/base-site.ts'

/** A page context of the base site, with top-level keys replaced. */
function contextOf(overrides = ''): PageContext {
  const loaded = loadSite(baseSite(overrides))
  if (!loaded.site) throw new Error(JSON.stringify(loaded.faults))
  const plan = makePlan(loaded.site, date(BASE_ON))
  const findings = runChecks(
    { loaded, plan, fleet: { sites: [loaded.site], register: loadRegister(baseRegister).tags } },
    CHECKS
  )
  return {
    site: loaded.site,
    plan,
    findings,
    words: EN_US,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0.0.0',
    prints: []
  }
}

const sectionOf = (overrides: string, id: string): Section => {
  const section = makeBinder(contextOf(overrides)).sections.find(one => one.id === id)
  if (!section) throw new Error(`no section ${id}`)
  return section
}

const tables = (blocks: readonly Block[]): TableBlock[] =>
  blocks.filter((one): one is TableBlock => one.kind === 'table')
const texts = (section: Section): string => JSON.stringify(section.blocks)

describe('the sections of a binder', () => {
  it('come in one order, safety first, and the making of the numbers before glossary and index', () => {
    const ids = makeBinder(contextOf()).sections.map(one => one.id)
    expect(ids[0]).toBe('safety')
    expect(ids.slice(-3)).toEqual(['numbers', 'glossary', 'index'])
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('stay when nothing is supplied for them, and say so', () => {
    const full = makeBinder(contextOf()).sections.map(one => one.id)
    const bare = makeBinder(
      contextOf('contacts: []\nsupplies: []\nwarranty: []\nstations: []\ncontrollers: []')
    ).sections
    expect(bare.map(one => one.id)).toEqual(full)
    for (const id of ['contacts', 'supplies', 'controllers', 'zones', 'wires', 'schedule', 'warranty']) {
      const section = bare.find(one => one.id === id)
      expect(section?.notSupplied, id).toBe(true)
      expect(JSON.stringify(section?.blocks), id).toMatch(/not supplied|no schedule/u)
    }
  })

  it('that are empty are listed as missing', () => {
    const missing = sectionOf('contacts: []\nsupplies: []', 'missing')
    expect(texts(missing)).toContain('Contacts')
    expect(texts(missing)).toContain('Water supply')
  })
})

describe('the wire schedule', () => {
  it('prints loop, expected reading, volts, limit and verdict of each run', () => {
    const [schedule] = tables(sectionOf('', 'wires').blocks)
    const row = schedule?.rows.find(one => one[0]?.text === 'K1/2')?.map(cell => cell.text.replaceAll('\u00a0', ' '))
    // 2 × 30 m × 12.1 Ω/km (IEC 60228) = 0.726 Ω; 9 V × 6 ÷ 6.726 = 8.03 V
    expect(row).toEqual(expect.arrayContaining(['30 m', '0.73 Ω', '6.73 Ω', '8.03 V', 'PASSES']))
  })

  it('says why a run is not computed where the size is ambiguous', () => {
    const wires = sectionOf(
      'stations:\n  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 0.8 mm, length: 20 m }] }',
      'wires'
    )
    expect(texts(wires)).toContain('not computed')
    expect(texts(wires)).toContain('NOT COMPUTED')
  })

  it('holds a master valve with wires of its own', () => {
    const wires = sectionOf(
      `controllers:
  - id: K1
    box: VB1
    sheet: _shared/sheets/plain.md
    master-valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V, wire: [{ size: 1.5 mm², length: 4 m }] }`,
      'wires'
    )
    expect(texts(wires)).toContain('K1/MV')
  })
})

describe('the schedule', () => {
  it('parts percent and days from no station: every row of a short program but its last leads the next', () => {
    const [table] = tables(sectionOf('', 'schedule').blocks)
    const heads = table?.rows.flatMap((row, index) => (row[1]?.text === 'Monthly percent' ? [index] : [])) ?? []
    expect(heads.length).toBeGreaterThan(0)
    for (const head of heads) expect(table?.leads).toEqual(expect.arrayContaining([head, head + 1]))
    expect(table?.leads).not.toContain((table?.rows.length ?? 0) - 1)
  })
})

describe('the captions of the watering day and week', () => {
  const captions = (site: string) =>
    sectionOf(site, 'controllers').blocks.flatMap(one => (one.kind === 'figure' ? [one.caption] : []))

  it('speak of the hours allowed where a rule is on file, and only there', () => {
    expect(captions('').map(one => /hours allowed/u.test(one))).toEqual([true, true])
    const without = captions('watering-rules: []')
    expect(without.map(one => /hours allowed/u.test(one))).toEqual([false, false])
    expect(without[0]).toContain('No watering rule is on file.')
  })
})

describe('figures in both unit systems', () => {
  it('are in feet and gallons for a US site and in meters for a metric one', () => {
    const us = texts(sectionOf('units: us', 'wires')) + texts(sectionOf('units: us', 'schedule'))
    const metric = texts(sectionOf('', 'wires')) + texts(sectionOf('', 'schedule'))
    expect(us).toMatch(/98\u00a0ft/u)
    expect(us).toContain('gal')
    expect(metric).toMatch(/30\u00a0m"/u)
    expect(metric).toContain('m³')
  })
})

describe('the water section', () => {
  it('puts what is needed beside what is set, month by month', () => {
    const need = tables(sectionOf('', 'water').blocks).at(-1)
    const [needed, set] = (need?.rows ?? []).filter((_, index) => index < 2).map(row => row.map(cell => cell.text))
    expect(needed?.[0]).toBe('K1/1')
    // Program A waters station 1 for 25 min whenever it is in season; July is, January is not.
    expect(set?.[9]).toBe('25')
    expect(set?.[3]).toBe('–')
    // 112 mm of reference evapotranspiration × 0.5 = 56 mm over 15.5 waterings at 6 mm/h: 36.1 min, rounded up.
    expect(needed?.[9]).toBe('37')
  })

  it('says that it is not supplied where no evapotranspiration is on file', () => {
    const section = sectionOf('climate: {}', 'water')
    expect(section.notSupplied).toBe(true)
    expect(texts(section)).toContain('not supplied')
  })
})

describe('open items', () => {
  const stations = Array.from(
    { length: 7 },
    (_, index) => `  - { id: K1/${index + 1}, zone: Z${index + 1}, valve: { box: VB1 } }`
  ).join('\n')

  it('that are alike are told once, with the names of the others', () => {
    const open = sectionOf(`stations:\n${stations}`, 'open-items')
    const alike = open.blocks.filter(one => one.kind === 'finding' && one.code === 'valve/coil-kind-unknown')
    expect(alike).toHaveLength(1)
    expect(texts(open)).toContain('Z2, Z3, Z4, Z5, Z6, Z7')
  })

  it('say that nothing is open where nothing is', () => {
    expect(contextOf().findings).toEqual([])
    expect(texts(sectionOf('', 'open-items'))).toContain('Nothing is open')
  })
})

describe('how the numbers were made', () => {
  it('shows the working of every calculation that was used, with its sources', () => {
    const numbers = sectionOf('', 'numbers')
    const names = numbers.blocks.flatMap(one => (one.kind === 'working' ? [one.name] : []))
    expect(names).toEqual(expect.arrayContaining(['wire-loop', 'coil-voltage', 'due-date']))
    for (const block of numbers.blocks)
      if (block.kind === 'working') expect(block.sources.length, block.name).toBeGreaterThan(0)
    expect(texts(numbers)).toContain('IEC 60228')
  })
})

describe('private words', () => {
  it('stand in no section, and neither does a phone that is not public', () => {
    const overrides =
      'private: { keys: locker 88, gate: "9142" }\ncontacts:\n  - { role: owner, name: A. Owner, phone: "01632 960077" }'
    const all = JSON.stringify(makeBinder(contextOf(overrides)))
    for (const word of ['locker 88', '9142', '960077']) expect(all).not.toContain(word)
    expect(all).toContain('on the restricted sheet')
  })
})
