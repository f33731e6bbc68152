import { describe, expect, it } from 'vitest'
import { zoneEtoM } from '../../../src/domain/climate/eto-zone.ts'
import { monthFromDays } from '../../../src/domain/climate/month-from-days.ts'
import { sum } from '../../../src/base/collections.ts'
import { ETO_ZONES } from '../../../src/reference/eto-zones.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('the zone table', () => {
  it.each(ETO_ZONES)('zone $zone adds up to $totalIn in, the total printed with its row', ({ zone, totalIn }) => {
    const months = zoneEtoM(zone) as readonly number[]
    expect(months).toHaveLength(12)
    expect(sum(months) / 0.0254).toBeCloseTo(totalIn, 6)
    expect(calc('eto-zone', { zone: String(zone) })['year-us']).toBeCloseTo(totalIn, 6)
  })

  it('has no zone 0, 19 or one between two', () => {
    for (const zone of [0, 19, 12.5]) expect(zoneEtoM(zone)).toMatchObject({ absent: true })
    expect(calcOrAbsent('eto-zone', { zone: '19' })).toContain('they go from 1 to 18')
  })
})

describe('a month from days on record', () => {
  it('is their mean times its days, over one year or several', () => {
    expect(monthFromDays(0.31, 62, 7)).toBeCloseTo(0.155, 12)
    expect(monthFromDays(0.057, 57, 2)).toBeCloseTo(0.028, 12)
  })

  it('wants ten days, and takes no rain for an answer', () => {
    expect(monthFromDays(0, 10, 7)).toBe(0)
    expect(monthFromDays(0.05, 9, 7)).toMatchObject({ absent: true })
    expect(calcOrAbsent('month-from-days', { total: '-1 mm', days: '31', month: 'Jul' })).toContain('below zero')
  })
})
