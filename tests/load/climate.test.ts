import { describe, expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { wordFault } from '../../src/checks/run.ts'
import { loadSite } from '../../src/load/site.ts'
import { baseSite } from '../support/base-site.ts'

const load = (climate: string) => loadSite(baseSite(`climate: { ${climate} }\n`))
const told = (climate: string) =>
  load(climate).faults.map(fault => {
    const { message, fix } = wordFault('base', fault, CHECKS)
    return `${message} ${fix}`
  })

const ROW = '8.2 9.0 11.5 14 18 21.3 23 22.6 19 15 11 8.9'

describe('months of a climate', () => {
  it('are a map of months, or a pasted row with one unit', () => {
    const row = load(`mean-high: ${ROW} °C`)
    expect(row.faults).toEqual([])
    expect(Object.keys(row.site?.climate?.meanHigh ?? {})).toHaveLength(12)
    expect(row.site?.climate?.meanHigh?.Jun).toEqual({ dimension: 'temperature', si: 21.3, value: 21.3, unit: '°C' })
    expect(load('mean-high: { Jun: 70 °F }').site?.climate?.meanHigh?.Jun?.si).toBeCloseTo(21.11, 2)
  })

  it('take commas between numbers, below zero, and a minus sign', () => {
    const { site, faults } = load(`mean-low: "-4, \u22123, 0, 2, 5, 9, 11, 10, 7, 3, -1, -3 °C"`)
    expect(faults).toEqual([])
    expect(site?.climate?.meanLow?.Feb?.si).toBe(-3)
  })

  it('of eleven numbers, without a unit or with a decimal comma are told, with the row put right', () => {
    expect(told(`mean-high: 1 2 3 4 5 6 7 8 9 10 11 °C`)[0]).toContain(
      'twelve amounts, January first, with the unit once at the end'
    )
    expect(told(`mean-high: ${ROW}`)[0]).toContain(`mean-high: ${ROW} °C`)
    expect(told(`mean-high: "${ROW.replace('8.2', '8,2')} °C"`)[0]).toContain(`mean-high: "${ROW} °C"`)
    expect(told(`rain: ${ROW} °C`)[0]).toContain('is a temperature; a length is due')
  })

  it('tell the hours of a month that stand for those of a day, and the most that a day can have is taken', () => {
    const sun = (hours: number) => `sunshine: ${Array.from({ length: 12 }, () => hours).join(' ')} h`
    expect(told(sun(62))[0]).toContain('divide the hours of a month by its days')
    expect(told(sun(24))).toEqual([])
    expect(told('sunshine: { Jul: 25 h, Jun: 24 h }')).toHaveLength(1)
  })

  it('tell a humidity above 100 % and rain below nothing', () => {
    expect(told('humidity: 101 2 3 4 5 6 7 8 9 10 11 12 %')[0]).toContain('at most 100 %')
    expect(told('rain: -1 2 3 4 5 6 7 8 9 10 11 12 mm')[0]).toContain('must be zero or more')
  })

  it('tell a key that is misspelt', () => {
    expect(told(`mean-hi: ${ROW} °C`)[0]).toContain('mean-high')
  })
})

describe('phases, uniformity and cans', () => {
  const station = (facts: string) => loadSite(baseSite(`stations:\n  - { id: K1/1, zone: Z1, ${facts} }\n`))

  it('are read as written, of the station and of the site', () => {
    const facts = 'phases: [{ name: establishment, to: 2026-06-14, percent: 130 % }, { name: Temporary, factor: 0.4 }]'
    const { site } = station(`${facts}, uniformity: 65 %, catch-cans: { catches: 10 12.5 9 11 mL, time: 10 min }`)
    const [one] = site?.stations ?? []
    expect(one?.phases).toMatchObject([
      { name: 'establishment', to: '2026-06-14', percent: { si: 1.3 } },
      { name: 'temporary', factor: 0.4 }
    ])
    expect(one?.uniformity?.si).toBeCloseTo(0.65, 12)
    expect(one?.catchCans?.catches.map(can => can.value)).toEqual([10, 12.5, 9, 11])
    const whole = loadSite(baseSite('phases: [{ name: established }]\n'))
    expect(whole.site?.phases).toMatchObject([{ name: 'established' }])
    expect(loadSite(baseSite()).site?.phases).toBeUndefined()
  })

  it('cans without a unit are told with the row put right', () => {
    const { faults } = station('catch-cans: { catches: 10 12 9 }')
    const told = faults.filter(one => one.fatal).map(one => [one.code, one.details['corrected']])
    expect(told).toEqual([['file/unit-missing', 'catches: 10 12 9 mL']])
  })

  it('a phase that is none is told', () => {
    const codes = station('phases: [{ name: young }]').faults.map(one => one.code)
    expect(codes).toContain('file/not-one-of')
  })
})
