import { describe, expect, it } from 'vitest'
import type { Block, Section } from '../../src/binder/blocks.ts'
import { budgetSection } from '../../src/binder/sections/budget.ts'
import { pressureSection } from '../../src/binder/sections/pressure.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function contextOf(keys: string, visits: readonly string[] = []) {
  const named = visits.map((text, index) => [`visit-${index + 1}.md`, `${text}\n`] as const)
  const { site, faults } = loadSite(baseSite(keys, { visits: named }))
  if (!site) throw new Error(JSON.stringify(faults))
  const plan = makePlan(site, date(BASE_ON))
  return { site, plan, findings: [], words: EN_US, publicAddress: '', version: '0.0.0', prints: [] }
}

const kinds = ({ blocks }: Section): readonly Block['kind'][] => blocks.map(one => one.kind)
const text = (section: Section): string => JSON.stringify(section.blocks).replaceAll('\u00a0', ' ')

const PIPE = `supplies: [{ id: S1, kind: potable, static-pressure: 4.1 bar, losses: [{ of: meter, loss: 0.25 bar }], pipe: [{ inside: 40.8 mm, material: plastic, length: 34 m }] }]
stations:
  - { id: K1/1, zone: Z1, valve: { normal-flow: 12 L/min }, devices: { kind: drip, pressure: 1 bar } }
  - id: K1/2
    zone: Z2
    valve: { normal-flow: 28 L/min, loss: 0.2 bar }
    pipe: [{ size: 20 mm PE, inside: 16 mm, material: plastic, length: 40 m, rise: 6 m }]
    devices: { kind: spray, pressure: 2.1 bar, drop: 6 m }
`

describe('supply and pressure along the way', () => {
  it('says what is not supplied where no pipe is written', () => {
    const section = pressureSection(contextOf('revision: "2"\n'))
    expect(section.notSupplied).toBe(true)
    expect(kinds(section)).toEqual(['not-supplied'])
  })

  it('prints what is left at each zone, short and enough by word and shape, with every length of pipe', () => {
    const section = pressureSection(contextOf(PIPE))
    const printed = text(section)
    for (const words of ['ENOUGH', 'SHORT', 'FAST', 'S1, main 1', 'K1/2, lateral 1', '20 mm PE', 'Loss of the meter'])
      expect(printed).toContain(words)
    expect(printed).toContain('"state":"bad"')
    expect(printed).toContain('"state":"good"')
  })

  it('draws the zone with the least to spare, from the pressure of the supply to what is left', () => {
    const context = contextOf(PIPE)
    const figures = pressureSection(context).blocks.flatMap(one => (one.kind === 'figure' ? [one.figure] : []))
    const [figure] = figures
    if (figures.length !== 1 || figure?.figure !== 'pressure-way') throw new Error('one figure is due')
    expect(figure.title).toContain('K1/2')
    expect(figure.points.map(one => one.label)).toEqual(['supply, bar', 'meter', 'main 1', 'valve', 'lateral 1'])
    expect(figure.points[0]?.value).toBeCloseTo(4.1, 9)
    expect(figure.points.at(-1)?.value).toBeLessThan(2.1)
  })

  it('asks for check valves where heads lie low and nothing is said of them', () => {
    expect(text(pressureSection(contextOf(PIPE)))).toContain('"standing":"not-supplied"')
  })
})

describe('the water budget', () => {
  const readings = [
    'on: 2026-04-06\nreadings: [{ supply: S1, meter: 1284 m³ }]',
    'on: 2026-04-20\nreadings: [{ supply: S1, meter: 1294 m³ }]'
  ]

  it('prints estimate and programs where no allowance is on file, and asks for allowance and readings', () => {
    const section = budgetSection(contextOf('revision: "2"\n'))
    expect(section.notSupplied).toBe(true)
    expect(text(section).split('"standing":"not-supplied"').length - 1).toBe(3)
    expect(kinds(section)).toContain('table')
  })

  it('puts a year within or over its allowance by word and shape', () => {
    const over = text(budgetSection(contextOf('budget: { form: annual volume, annual: 80 m³ }\n')))
    expect(over).toContain('95.8 m³ OVER')
    expect(over).toContain('73.7 m³ WITHIN')
  })

  it('by the ordinance it shows each zone, and the efficiency that it counts with as taken', () => {
    const printed = text(budgetSection(contextOf('budget: { form: ordinance 2015, kind: residential }\n')))
    expect(printed).toContain('{"text":"81 %","standing":"default"}')
    expect(printed).toContain('{"text":"75 %","standing":"default"}')
    expect(printed).toContain('0.55')
  })

  it('holds each stretch between readings against programs and allowance', () => {
    const printed = text(budgetSection(contextOf('budget: { form: annual volume, annual: 80 m³ }\n', readings)))
    expect(printed).toContain('{"text":"10 m³","standing":"measured"}')
    expect(printed).toContain('191 %')
  })

  it('is only what is not supplied where there is nothing at all', () => {
    const section = budgetSection(contextOf('controllers: []\nstations: []\n'))
    expect(kinds(section)).toEqual(['not-supplied'])
  })
})
