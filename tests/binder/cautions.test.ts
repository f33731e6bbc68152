import { describe, expect, test } from 'vitest'
import * as cautions from '../../src/binder/cautions.ts'
import { CAUTIONS } from '../../src/domain/safety/cautions.ts'
import type { CautionId, ChosenCaution } from '../../src/domain/safety/cautions.ts'
import type { Site } from '../../src/model/site.ts'
import { planCautions } from '../../src/plan/cautions.ts'
import { date } from '../../src/units/date.ts'
import { quantity } from '../../src/units/quantity.ts'
import { cautionWords } from '../../src/words/en-US/cautions.ts'
import { bareBox, bareController, bareRules, bareSite, bareStation, bareSupply } from '../support/bare-site.ts'

const cautionBlock = (site: Site, id: CautionId) => cautions.cautionBlock(site, id, cautionWords)
const cautionBlocks = (site: Site, all: readonly ChosenCaution[]) => cautions.cautionBlocks(site, all, cautionWords)
const cautionReasons = (all: readonly ChosenCaution[]) => cautions.cautionReasons(all, cautionWords)
const boxHazards = (site: Site, box: string, all: readonly ChosenCaution[]) =>
  cautions.boxHazards(site, box, all, cautionWords)
const coverTable = (site: Site) => cautions.coverTable(site, cautionWords)
const hazardLine = (site: Site) => cautions.hazardLine(site, cautionWords)

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')
const inCountry = (country: string, stated: Partial<Site> = {}) =>
  bareSite({ ...stated, location: { at: AT, country } })
const hazards = (site: Site, box: string) => boxHazards(site, box, planCautions(site, ON))
const ALL = CAUTIONS.map(({ id }) => ({ id, reason: 'All of them.' }))

describe('the blocks of the cautions', () => {
  test.each(['US', 'GB', 'DE', 'AU', 'NZ', 'JP'])('in %s every one has all its parts', country => {
    const blocks = cautionBlocks(inCountry(country), ALL)
    expect(blocks).toHaveLength(CAUTIONS.length)
    for (const block of blocks) {
      for (const part of [block.title, block.hazard, block.consequence, block.edition, block.deference])
        expect(part.trim().length, block.title).toBeGreaterThan(3)
      expect(block.avoidance.length, block.title).toBeGreaterThanOrEqual(3)
      expect(block.deference).toContain('the authority having jurisdiction come first.')
    }
  })

  test('stand in the order of the plan', () => {
    const site = bareSite({ place: 'roundabout' })
    const signals = cautionBlocks(site, planCautions(site, ON)).map(block => block.signal)
    expect(signals).toEqual([...signals].sort((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b)))
    expect(signals[0]).toBe('DANGER')
  })

  test('no two steps of one caution are the same', () => {
    for (const country of ['US', 'GB', 'JP'])
      for (const { avoidance } of cautionBlocks(inCountry(country), ALL))
        expect(new Set(avoidance).size).toBe(avoidance.length)
  })

  test('name 811 and the federal rule in the US, HSG47 in Britain', () => {
    const us = cautionBlock(inCountry('US'), 'buried-utilities')
    expect(us.avoidance[0]).toContain('Call 811')
    expect(us.edition).toContain('29 CFR 1926.651')
    expect(us.edition).not.toContain('example')
    const gb = cautionBlock(inCountry('GB'), 'buried-utilities')
    expect(gb.edition).toContain('HSG47')
    expect(gb.edition).toContain('2014')
    expect(gb.avoidance.join(' ')).not.toContain('811')
  })

  test('name the US rule as an example where the country is not known or has none here', () => {
    for (const site of [bareSite(), inCountry('JP')]) {
      const { edition } = cautionBlock(site, 'traffic')
      expect(edition).toContain('Manual on Uniform Traffic Control Devices')
      expect(edition).toMatch(/US rules as an example: check the local equivalent\.$/u)
    }
  })

  test('say how an edition is known', () => {
    expect(cautionBlock(inCountry('AU'), 'traffic').edition).toBe(
      'AS 1742.3, traffic control for works on roads, 2019 (from memory).'
    )
    expect(cautionBlock(bareSite(), 'blow-out').edition).toBe('Common practice, no source.')
  })

  test('carry a year, or say that there is none, for every code', () => {
    for (const country of ['US', 'GB', 'FR', 'AU', 'NZ', 'JP'])
      for (const { edition, title } of cautionBlocks(inCountry(country), ALL))
        for (const cited of edition.split('; '))
          expect(cited, title).toMatch(
            /\b(?:19|20)\d\d\b|undated|as adopted locally|as each state has it|common practice|product sheet/iu
          )
  })

  test('dispose of batteries by the law of the place', () => {
    expect(cautionBlock(inCountry('US'), 'battery-disposal').avoidance[0]).toContain('California')
    expect(cautionBlock(inCountry('FR'), 'battery-disposal').edition).toContain('2023/1542')
    expect(cautionBlock(inCountry('AU'), 'battery-disposal').avoidance[0]).toContain('local authority')
  })

  test('a 4.5 ft trench in the US: ladder from 4 ft, protective system from 5 ft or without an examination', () => {
    const steps = cautionBlock(inCountry('US'), 'trench').avoidance.join(' ')
    expect(steps).toContain('5 ft (1.52 m)')
    expect(steps).toContain('4 ft (1.22 m)')
    expect(cautionBlock(inCountry('GB'), 'trench').avoidance.join(' ')).not.toContain('5 ft')
  })

  test('put first what the site itself states', () => {
    const site = bareSite({
      workRules: bareRules({
        trafficControlPlan: 'TM-118',
        laneClosure: { from: 22 * 60, to: 5 * 60 },
        parapet: quantity(0.6, 'm', 'length'),
        anchors: ['A1', 'A2'],
        isolation: 'pump house, red switch'
      }),
      winter: { at: AT, method: 'air', lowestRated: quantity(3.4, 'bar', 'pressure') }
    })
    expect(cautionBlock(site, 'traffic').avoidance.slice(0, 2)).toEqual([
      'Follow traffic-control plan or permit TM-118.',
      'Work only in the stated closure hours, 22:00–05:00.'
    ])
    expect(cautionBlock(site, 'fall-edge').avoidance.slice(0, 2)).toEqual([
      'Treat the parapet of 0.6\u00a0m as no guard: a guardrail is at least 39 in (0.99 m) high.',
      'Tie off to the anchors that the site file names: A1, A2.'
    ])
    expect(cautionBlock(site, 'mains').avoidance[0]).toBe('Switch the mains off here: pump house, red switch.')
    expect(cautionBlock(site, 'blow-out').avoidance[0]).toContain('3.4\u00a0bar')
  })

  test('a parapet as high as a guardrail is not called low', () => {
    const at = (m: number) => bareSite({ workRules: bareRules({ parapet: quantity(m, 'm', 'length') }) })
    expect(cautionBlock(at(0.99), 'fall-edge').avoidance.join(' ')).not.toContain('no guard')
    expect(cautionBlock(at(0.98), 'fall-edge').avoidance.join(' ')).toContain('no guard')
  })

  test('the reasons are a table of their own', () => {
    const site = bareSite({ place: 'median' })
    const table = cautionReasons(planCautions(site, ON))
    expect(table.rows[0]?.map(cell => cell.text)).toEqual([
      'DANGER: Moving traffic beside the work',
      'The place is a median, inside the road, and no traffic-control plan is stated.'
    ])
    expect(table.notes?.[0]).toContain('ANSI Z535.6')
  })
})

const ORDER = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']

describe('the hazards of one box', () => {
  test('are at most three, worst first', () => {
    const site = bareSite({ place: 'roundabout', boxes: [bareBox('VB1')], stations: [bareStation()] })
    expect(hazards(site, 'VB1').map(line => line.signal)).toEqual(['DANGER', 'CAUTION', 'CAUTION'])
    expect(hazards(site, 'VB1')[0]?.text).toBe('Traffic passes beside this box.')
  })

  test('in a park, they end with the coils that 24 V AC ruins', () => {
    const site = bareSite({ place: 'park', boxes: [bareBox('VB1')], stations: [bareStation()] })
    expect(hazards(site, 'VB1').map(line => line.signal)).toEqual(['CAUTION', 'CAUTION', 'NOTICE'])
    expect(hazards(site, 'VB1')[2]?.text).toBe('DC latching coils: 24 V AC ruins them.')
  })

  test('always hold what the box’s own list notes, in place of the general line', () => {
    const site = bareSite({
      place: 'roof',
      workRules: bareRules({ road: true }),
      boxes: [bareBox('VB1', ['wasps', 'broken glass']), bareBox('VB2')],
      supplies: [bareSupply({ injection: 'feed' })],
      stations: [bareStation()]
    })
    const noted = hazards(site, 'VB1')
    expect(noted).toHaveLength(3)
    expect(noted[2]).toEqual({
      signal: 'CAUTION',
      text: 'Noted in this box: wasps, broken glass.',
      instead: 'Look in with a light first, and wear gloves.'
    })
    expect(
      hazards(site, 'VB2')
        .map(line => line.text)
        .join(' ')
    ).not.toContain('wasps')
  })

  test('name the mains only at the box whose controller is on it', () => {
    const site = bareSite({
      place: 'park',
      boxes: [bareBox('VB1'), bareBox('VB2')],
      controllers: [
        bareController({ id: 'K1', box: 'VB1', power: 'adapter' }),
        bareController({ id: 'K2', box: 'VB2' })
      ]
    })
    expect(hazards(site, 'VB1')[0]?.text).toContain('Mains voltage')
    expect(
      hazards(site, 'VB2')
        .map(line => line.text)
        .join(' ')
    ).not.toContain('Mains')
  })

  test('are none where the site calls for none, and a box that nobody listed has no notes', () => {
    expect(boxHazards(bareSite(), 'VB9', [])).toEqual([])
  })
})

describe('the line of hazard that stands first', () => {
  test('stands on roads, roofs and reclaimed water, and nowhere else', () => {
    const { road, roof, reclaimed } = cautionWords.hazardLine
    expect(hazardLine(bareSite({ place: 'median' }))).toBe(road)
    expect(hazardLine(bareSite({ place: 'park', workRules: bareRules({ road: true }) }))).toBe(road)
    expect(hazardLine(bareSite({ place: 'roof' }))).toBe(roof)
    expect(hazardLine(bareSite({ supplies: [bareSupply({ kind: 'reclaimed' })] }))).toBe(reclaimed)
    expect(hazardLine(bareSite({ place: 'park' }))).toBeUndefined()
  })

  test('says both where two hold', () => {
    const site = bareSite({ place: 'median', supplies: [bareSupply({ kind: 'recycled water' })] })
    expect(hazardLine(site)).toBe('TRAFFIC: stay inside the traffic control. RECLAIMED WATER: do not drink.')
  })
})

describe('the table of least cover', () => {
  const row = (site: Site, where: string) =>
    coverTable(site)
      .rows.find(cells => cells[0]?.text.startsWith(where))
      ?.map(cell => cell.text)

  test('gives 6 in planting, 24 under a public road, 18 under the driveway of a dwelling', () => {
    expect(row(bareSite(), 'Planting')?.slice(1)).toEqual(['6', '150'])
    expect(row(bareSite(), 'Street')?.slice(1)).toEqual(['24', '600'])
    expect(row(bareSite(), 'Driveway')?.slice(1)).toEqual(['18', '450'])
  })

  test('tells direct burial from raceway under a slab', () => {
    expect(row(bareSite(), 'Under a 4 in')?.slice(1)).toEqual(['6 direct, 4 in raceway', '150 direct, 100 in raceway'])
  })

  test('names the edition and what comes before it, and is an example outside the US', () => {
    const notes = coverTable(inCountry('US')).notes ?? []
    expect(notes[0]).toContain('local electrical code, the road authority and the permit come first')
    expect(notes[1]).toContain('top of the cable')
    expect(notes.join(' ')).toContain('300.5(A)')
    expect(notes.join(' ')).toContain('2023')
    expect(notes.join(' ')).toContain('named from memory')
    expect(notes.join(' ')).not.toContain('check the local equivalent')
    expect(coverTable(inCountry('GB')).notes?.join(' ')).toContain('check the local equivalent')
  })
})
