import { describe, expect, it } from 'vitest'
import type { Block, TableBlock } from '../../src/binder/blocks.ts'
import type { PageContext } from '../../src/binder/context.ts'
import { waterSection } from '../../src/binder/sections/water.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function tablesOf(keys: string): readonly TableBlock[] {
  const { site, faults } = loadSite(baseSite(keys))
  if (!site) throw new Error(JSON.stringify(faults))
  const context: PageContext = {
    site,
    plan: makePlan(site, date(BASE_ON)),
    findings: [],
    words: EN_US,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0.0.0',
    prints: []
  }
  return waterSection(context).blocks.filter((one: Block): one is TableBlock => one.kind === 'table')
}

const table = (keys: string, caption: string): TableBlock => {
  const found = tablesOf(keys).find(one => one.caption?.startsWith(caption))
  if (!found) throw new Error(`no table ${caption}`)
  return found
}
const cells = ({ rows }: TableBlock, row: number): string[] =>
  (rows[row] ?? []).map(one => one.text.replaceAll('\u00a0', ' '))

/** A month of a table that has the months side by side, counted from 1. */
const monthOf = ({ rows }: TableBlock, month: number): string[] =>
  rows.map(row => row[month]?.text.replaceAll('\u00a0', ' ') ?? '')

const TEMPERATURES =
  'climate: { mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C, mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C }\n'

describe('the climate in the binder', () => {
  it('tells of each month how it was made and how far it may be off', () => {
    const climate = table(TEMPERATURES, 'Climate')
    expect(climate.columns).toHaveLength(13)
    expect(monthOf(climate, 7).slice(1)).toEqual(['20 %'])
    expect(climate.rows[0]?.[7]?.standing).toBe('computed')
    expect(climate.notes?.join(' ')).toContain('How it was made: mean temperatures.')
    expect(climate.notes?.join(' ')).toContain('Computed by eto-hargreaves; see')
  })

  it('has no line for what an estimate is off by, nor for rain, where there is none', () => {
    const stated = table('revision: "2"\n', 'Climate')
    expect(stated.rows.map(row => row[0]?.text.replaceAll('\u00a0', ' '))).toEqual(['Reference ET, mm'])
    expect(stated.rows[0]?.[7]).toMatchObject({ text: '112.0', standing: 'stated' })
    expect(stated.notes?.join(' ')).toContain('No rain is counted.')
  })

  it('names the method by which rain counts, and says that none does under glass', () => {
    const rain = `climate: { eto-zone: 12, rain: 60 60 60 60 60 60 60 60 60 60 60 60 mm, effective-rain: scs }\n`
    const open = table(rain, 'Climate')
    expect(monthOf(open, 7)).toEqual(['204.7', '60.0', '54.2'])
    expect(open.notes?.join(' ')).toContain('How it was made: zone table, zone 12.')
    expect(open.notes?.join(' ')).toContain('FAO paper 46')
    const glass = table(`place: glasshouse\n${rain}`, 'Climate')
    expect(monthOf(glass, 7).at(-1)).toBe('0.0')
    expect(glass.notes?.join(' ')).toContain('Under glass no rain counts.')
  })

  it('says by zone where each zone is asked', () => {
    const keys = `climate: { eto-zone: 12, rain: 60 60 60 60 60 60 60 60 60 60 60 60 mm, effective-rain: tr-21 }\n`
    expect(monthOf(table(keys, 'Climate'), 7).at(-1)).toBe('by zone')
  })

  it('is not there where nothing is known', () => {
    expect(tablesOf('climate:\n').filter(one => one.caption?.startsWith('Climate'))).toEqual([])
  })
})

describe('what each zone wants', () => {
  const station = (facts: string) =>
    `stations:\n  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 12 L/min }, area: 120 m², soil: { available-water: 40 mm }, ${facts} }\n`

  it('tells the parts of a factor, the phases with their days, and the multiplier', () => {
    const phases =
      'phases: [{ name: establishment, to: 2026-06-14, percent: 130 % }, { name: established, from: 2026-06-15 }]'
    const keys = station(`plants: { species-factor: 0.5, microclimate: 1.2 }, uniformity: 80 %, ${phases}`)
    const row = cells(table(keys, 'What each zone wants'), 0)
    expect(row[2]).toBe('0.6 = species 0.5 × density 1 × microclimate 1.2')
    expect(row[3]).toBe('Establishment to 2026-06-14: 130 % of the factor; Established from 2026-06-15')
    expect(row[4]).toBe('uniformity 80 %, stated: × 1.14')
  })

  it('tells the longest interval of the month that uses most, and has no column for phases where there are none', () => {
    const wants = table(station('plants: { factor: 0.5 }'), 'What each zone wants')
    expect(wants.columns.map(one => one.label)).not.toContain('Phases')
    // 40 mm, half of it, at 112 × 0.5 / 31 mm a day.
    expect(cells(wants, 0)).toContain('11 days, July')
  })

  it('puts zones that want the same on one line', () => {
    const both = table(
      'stations:\n  - { id: K1/1, zone: Z1, plants: { factor: 0.5 } }\n  - { id: K1/2, zone: Z2, plants: { factor: 0.5 } }\n',
      'Need of the plants'
    )
    expect(both.rows).toHaveLength(2)
    expect(cells(both, 0)[0]).toBe('K1/1, K1/2')
    expect(cells(both, 1)[8]).toBe('100')
  })
})
