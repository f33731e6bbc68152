import { describe, expect, it } from 'vitest'
import { publicContext } from '../../src/binder/context.ts'
import type { Block } from '../../src/binder/blocks.ts'
import type { PageContext } from '../../src/binder/context.ts'
import { batterySets, voltTexts } from '../../src/binder/battery-sets.ts'
import { faultSteps } from '../../src/binder/fault-steps.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { makeBoxPage } from '../../src/binder/make-box-page.ts'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { cautionCard } from '../../src/domain/safety/cautions.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { BatteryPlan } from '../../src/plan/plan.ts'
import { templateEnvironment } from '../../src/render/template-environment.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function baseContext(overrides = ''): PageContext {
  const loaded = loadSite(baseSite(overrides))
  if (!loaded.site) throw new Error(JSON.stringify(loaded.faults))
  const plan = makePlan(loaded.site, date(BASE_ON))
  const words = EN_US
  return {
    site: loaded.site,
    plan,
    findings: [],
    words,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0',
    prints: []
  }
}

const demos = assessFleet('sites', date('2026-05-01')).sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
const demo = (id: string): PageContext => {
  const found = demos.find(one => one.site.id === id)
  if (!found) throw new Error(id)
  return found
}

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ')
const blocksOf = (context: PageContext): readonly Block[] => {
  const section = makeBinder(context).sections.find(one => one.id === 'faults')
  if (!section) throw new Error('no section on fault finding')
  return section.blocks
}
const textOf = (context: PageContext): string => spaced(JSON.stringify(blocksOf(context)))

function rowOf(context: PageContext, station: string): string[] {
  const rows = blocksOf(context).flatMap(one => (one.kind === 'table' ? one.rows : []))
  const row = rows.find(one => one[0]?.text === station)
  if (!row) throw new Error(`no row ${station}`)
  return row.map(cell => spaced(cell.text))
}

const boxPages = demos.flatMap(context =>
  context.site.boxes.flatMap(box =>
    box.tag === undefined
      ? []
      : [{ site: context.site.id, page: makeBoxPage({ ...box, tag: box.tag }, publicContext(context)) }]
  )
)
const pageOf = (tag: string) => {
  const found = boxPages.find(one => one.page.tag === tag)
  if (!found) throw new Error(tag)
  return found.page
}

describe('fault finding in the binder', () => {
  it('follows the battery log and is no longer listed as missing', () => {
    const { sections } = makeBinder(baseContext())
    const ids = sections.map(one => one.id)
    expect(ids.indexOf('faults')).toBeGreaterThan(ids.indexOf('batteries'))
    expect(JSON.stringify(sections.find(one => one.id === 'missing'))).not.toContain('Fault finding')
  })

  it('opens with a lead-in and the symptoms, then eight steps in their order', () => {
    const blocks = blocksOf(baseContext())
    expect(blocks.slice(0, 2).map(one => one.kind)).toEqual(['paragraph', 'table'])
    const titles = blocks.flatMap(one => (one.kind === 'heading' ? [one.text] : []))
    expect(titles.map(title => title.slice(0, 1))).toEqual(['1', '2', '3', '4', '5', '6', '7', '8'])
    expect(titles[0]).toContain('by hand')
    expect(titles[7]).toContain('flow')
  })

  it('sends each symptom to steps that are there', () => {
    const named = EN_US.faults.symptoms.flatMap(row =>
      [...row.join(' ').matchAll(/\((\d)\)/gu)].map(([, n]) => Number(n))
    )
    expect(named.length).toBeGreaterThanOrEqual(EN_US.faults.symptoms.length)
    for (const number of named) expect(number).toBeLessThanOrEqual(Object.keys(EN_US.faults.steps).length)
  })

  it('gives each step a reason, something to do and something to find', () => {
    const context = baseContext()
    for (const step of faultSteps(context, context.site)) {
      expect(step.why, step.id).not.toBe('')
      expect(step.todo.length, step.id).toBeGreaterThan(0)
      expect(step.seen.length, step.id).toBeGreaterThan(0)
    }
  })

  it('prints what a meter should show, around the closeout reading where one is on file', () => {
    // K1/1 of the base site reads 6.2 Ω at the controller and 6.1 Ω at the coil: 20 % either way.
    expect(rowOf(baseContext(), 'K1/1')).toEqual(
      expect.arrayContaining(['6.20 Ω', '4.96 to 7.44 Ω', '6.10 Ω', '4.88 to 7.32 Ω'])
    )
  })

  it('prints what coil and wire give where no closeout reading is on file', () => {
    // 4.2 Ω + 2 × 128 m × 24.5 Ω/km = 10.47 Ω; (3.36 + 6.272) × 0.9214 and (5.04 + 6.272) × 1.05895
    expect(rowOf(demo('kestrel-cross'), 'K1/4')).toEqual(
      expect.arrayContaining(['6.27 Ω', '10.47 Ω', '8.87 to 11.98 Ω', '4.20 Ω', '3.10 to 5.34 Ω'])
    )
  })

  it('does not put the band around a reading that the stated coil cannot give', () => {
    const text = textOf(demo('kestrel-cross'))
    expect(rowOf(demo('kestrel-cross'), 'K1/3')).toContain('3.10 to 5.34 Ω')
    expect(text).toContain('K1/3: the reading on file is outside')
  })

  it('does not use a reading of a later day', () => {
    const { site, words } = baseContext()
    const before = { ...baseContext(), plan: makePlan(site, date('2026-03-19')), words }
    expect(rowOf(before, 'K1/1')).not.toContain('4.96 to 7.44 Ω')
  })

  it('says why a reading is not computed, and that none is to be expected where no station is on file', () => {
    const bare = 'stations:\n  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire } }'
    expect(rowOf(baseContext(bare), 'K1/1')).toContain('not computed')
    expect(textOf(baseContext('stations: []'))).toContain('No station is on file')
  })

  it('gives temperatures in the units of the site', () => {
    expect(textOf(baseContext())).toContain('0 °C to 35 °C')
    expect(textOf(baseContext('units: us'))).toContain('32 °F to 95 °F')
  })

  it('shows the working of the bands among the numbers', () => {
    const numbers = makeBinder(baseContext()).sections.find(one => one.id === 'numbers')
    const names = numbers?.blocks.flatMap(one => (one.kind === 'working' ? [one.name] : []))
    expect(names).toContain('expected-reading')
  })

  it('speaks of three leads only where a coil has them', () => {
    const three = 'stations:\n  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 3-wire } }'
    expect(textOf(baseContext(three))).toContain('Three leads')
    expect(textOf(baseContext())).not.toContain('Three leads')
  })
})

describe('the volts of a battery', () => {
  const battery = (kind: string, count: number, controller = 'K1'): BatteryPlan => ({
    controller,
    kind,
    count,
    dueOn: date('2027-01-01'),
    because: '',
    state: 'ok'
  })
  const sets = (...batteries: BatteryPlan[]) => batterySets(batteries, baseContext())

  it('are known for one 9 V alkaline and for four AA alkaline, by any of their names', () => {
    for (const [kind, count, change] of [
      ['9 V alkaline', 1, 'about 8.0 V'],
      ['6LR61', 1, 'about 8.0 V'],
      ['AA alkaline', 4, 'about 5.2 V']
    ] as const) {
      const [set] = sets(battery(kind, count))
      if (!set?.volts) throw new Error(kind)
      expect(voltTexts(set, EN_US).change).toBe(change)
    }
  })

  it('hold for each of two 9 V batteries by itself, and for no other number of AA cells', () => {
    expect(sets(battery('9 V alkaline', 2))[0]?.name).toContain('each one by itself')
    expect(sets(battery('AA alkaline', 2))[0]?.volts).toBeUndefined()
    expect(sets(battery('C alkaline', 4))[0]?.volts).toBeUndefined()
  })

  it('stand once for controllers with the same set, and not for one without cells', () => {
    const found = sets(battery('9 V alkaline', 1, 'K1'), battery('9 V alkaline', 1, 'K2'), battery('none', 0, 'K3'))
    expect(found.map(one => one.controllers)).toEqual(['K1, K2'])
  })

  it('say that they are from memory, on paper and on the page', () => {
    expect(textOf(baseContext())).toContain('No published figure was found for what is from memory')
    expect(JSON.stringify(pageOf('7KQ3F9X').faults)).toContain('from memory')
  })

  it('are one figure wherever they stand: that of the product sheet comes before one from memory', () => {
    const binder = makeBinder(demo('tinder-street-roof'))
    const rows = ['batteries', 'faults'].flatMap(id =>
      (binder.sections.find(one => one.id === id)?.blocks ?? []).flatMap(block =>
        block.kind === 'table' && block.columns.some(one => one.label.startsWith('Change below')) ? [block] : []
      )
    )
    expect(rows).toHaveLength(2)
    for (const {
      columns,
      rows: [row]
    } of rows) {
      const value = row?.[columns.findIndex(one => one.label.startsWith('Change below'))]
      expect(value).toMatchObject({ text: '8\u00a0V', standing: 'data-plate' })
    }
    const roof = boxPages.find(one => one.site === 'tinder-street-roof')
    expect(spaced(JSON.stringify(roof?.page.faults[1]))).toContain('change below 8 V under load (product sheet)')
  })

  it('send to the product sheet where no figure is known', () => {
    const line = 'controllers:\n  - { id: K1, box: VB1, battery: { kind: C alkaline, count: 2, fitted: 2026-03-20 } }'
    expect(textOf(baseContext(line))).toContain('see product sheet')
  })
})

describe('safety in fault finding', () => {
  it('stands before the work: pressure, cells, steady current and AC', () => {
    const context = baseContext()
    const steps = new Map(faultSteps(context, context.site).map(one => [one.id, one]))
    expect(steps.get('by-hand')?.cautions).toContain('stored-pressure')
    expect(steps.get('battery')?.cautions).toContain('battery-handling')
    expect(steps.get('pulse')?.cautions).toEqual(['stored-pressure', 'ac-on-latching'])
    const pulse = steps.get('pulse')?.todo.join(' ') ?? ''
    for (const words of ['off the controller first', 'Stand clear', 'Never hold a battery on the coil', 'never put AC'])
      expect(pulse).toContain(words)
  })

  it('is printed in full where the site did not call for it elsewhere', () => {
    const context = baseContext()
    const without = { ...context, plan: { ...context.plan, cautions: [] } }
    const titles = blocksOf(without).flatMap(one => (one.kind === 'caution' ? [one.title] : []))
    expect(titles).toContain('Pressure that is let out by hand')
    expect(titles).toContain('DC latching coils and 24 V AC')
  })

  it('warns of mains where an adapter feeds a controller', () => {
    const context = baseContext()
    const fed = context.site.controllers.map(one => ({ ...one, power: 'adapter' as const }))
    const steps = faultSteps(context, { stations: context.site.stations, controllers: fed })
    expect(steps.filter(one => one.cautions.includes('mains')).map(one => one.id)).toEqual(['battery', 'pulse', 'loop'])
    expect(faultSteps(context, context.site).some(one => one.cautions.includes('mains'))).toBe(false)
  })

  it('keeps on the box page the signal word of each caution, with the step it belongs to', () => {
    const { faults } = pageOf('7KQ3F9X')
    expect(faults[0]?.steps[0]).toMatch(new RegExp(`^${cautionCard('stored-pressure').signal}: .*pressure`, 'u'))
    expect(faults[1]?.steps[0]).toMatch(/^CAUTION: .*cells/u)
    const pulse = faults[3]?.steps.slice(0, 2).join(' ') ?? ''
    for (const words of ['stand clear', 'Never hold a battery on the coil', 'never put AC'])
      expect(pulse).toContain(words)
  })
})

describe('fault finding on a box page', () => {
  it('has the same eight steps, with the figures of this box', () => {
    const { faults } = pageOf('7KQ3F9X')
    expect(faults.map(one => one.title.slice(0, 1)).join('')).toBe('12345678')
    expect(spaced(JSON.stringify(faults[2]?.steps))).toContain('K1/1: 3.44 to 5.16 Ω')
    expect(spaced(JSON.stringify(faults[4]?.steps))).toContain('K1/4: 8.87 to 11.98 Ω')
  })

  it('speaks of the stations of its own box only, and is left out where nothing is wired', () => {
    for (const { page } of boxPages) {
      const here = page.wiredHere.map(one => one.station)
      const named = page.faults
        .flatMap(one => one.steps)
        .flatMap(step => /^((?:\S+\/\d+, )*\S+\/\d+): /u.exec(step)?.[1]?.split(', ') ?? [])
      expect([...new Set(named)].sort(), page.tag).toEqual([...here].sort())
      expect(page.faults.length, page.tag).toBe(here.length > 0 ? 8 : 0)
    }
  })

  it('is closed at first, reads without script, and leaves every demo page under 60 KB', () => {
    const environment = templateEnvironment()
    expect(boxPages.length).toBeGreaterThan(20)
    for (const { page } of boxPages) {
      const html = environment.render('pages/box-page.njk', { view: page })
      expect(Buffer.byteLength(html), page.tag).toBeLessThan(60_000)
      const part = /<section id="faults">.*?<\/section>/su.exec(html)?.[0] ?? ''
      expect(part.match(/<details>/gu) ?? [], page.tag).toHaveLength(page.faults.length)
      expect(part, page.tag).not.toMatch(/<details[^>]* open|with-script/u)
    }
  })
})
