import { describe, expect, it } from 'vitest'
import { mixedNeedM, mixedUseM, phaseFactor, phaseOn } from '../../../src/domain/water/phase-need.ts'
import { date } from '../../../src/units/date.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const phase = (name: 'establishment' | 'established' | 'temporary', from?: string, to?: string) => ({
  name,
  ...(from === undefined ? {} : { from: date(from) }),
  ...(to === undefined ? {} : { to: date(to) })
})
const on = (day: string, ...phases: ReturnType<typeof phase>[]) => phaseOn(date(day), phases).name

describe('the phase of a day', () => {
  it('holds from its first to its last day, both inclusive', () => {
    const young = phase('establishment', '2026-03-01', '2026-06-14')
    const days = ['2026-02-28', '2026-03-01', '2026-06-14', '2026-06-15']
    expect(days.map(day => on(day, young))).toEqual(['established', 'establishment', 'establishment', 'established'])
  })

  it('may be open at either end, and may be 29 February alone', () => {
    expect(on('1999-01-01', phase('establishment', undefined, '2026-06-14'))).toBe('establishment')
    expect(on('2199-01-01', phase('establishment', '2026-06-14'))).toBe('establishment')
    expect(on('2028-02-29', phase('establishment', '2028-02-29', '2028-02-29'))).toBe('establishment')
    expect(on('2028-03-01', phase('establishment', '2028-02-29', '2028-02-29'))).toBe('established')
  })

  it('is that which began last, and of two that began together the later written', () => {
    const [all, june] = [phase('established'), phase('establishment', '2026-06-01', '2026-06-30')]
    expect(on('2026-06-10', june, all)).toBe('establishment')
    expect(on('2026-06-10', all, june)).toBe('establishment')
    expect(on('2026-06-10', phase('established', '2026-06-01'), june)).toBe('establishment')
    expect(on('2026-06-10', june, phase('established', '2026-06-01'))).toBe('established')
  })

  it('of what is watered for a time only is none outside of it, unless an established phase holds the day', () => {
    const weeks = phase('temporary', '2026-03-01', '2026-05-31')
    expect(on('2026-06-01', weeks)).toBe('none')
    expect(on('2026-06-01', weeks, phase('established', '2026-06-01'))).toBe('established')
  })
})

describe('the factor in a phase', () => {
  it('is its own, a percent of that of the plants, or theirs', () => {
    expect(phaseFactor({ name: 'establishment', factor: 0.9, percent: 2 }, 0.5)).toBe(0.9)
    expect(phaseFactor({ name: 'establishment', percent: 1.3 }, 0.5)).toBeCloseTo(0.65, 12)
    expect(phaseFactor({ name: 'established' }, 0.5)).toBe(0.5)
    expect(phaseFactor({ name: 'none' }, undefined)).toBe(0)
    expect(phaseFactor({ name: 'establishment', percent: 1.3 }, undefined)).toBeUndefined()
  })
})

describe('the need of mixed days', () => {
  const parts = [
    { name: 'establishment', factor: 1, days: 10 },
    { name: 'established', factor: 0.1, days: 20 }
  ] as const

  it('lets no part fall below nothing: rain of the one does not water the other', () => {
    // 60 mm, 12 mm of rain, 30 days: (60 − 12) × 10 / 30 = 16; 60 × 0.1 is less than the rain.
    expect(mixedNeedM(0.06, 0.012, parts, 30)).toBeCloseTo(0.016, 12)
    expect(mixedUseM(0.06, parts, 30)).toBeCloseTo(0.024, 12)
    expect(mixedNeedM(0.06, 0, [], 30)).toBe(0)
  })

  it('is what the card gives, and the card refuses what it cannot read', () => {
    const inputs = { eto: '60 mm', rain: '12 mm', days: '30', phases: 'establishment 1 10, established 0.1 20' }
    expect(calc('phase-need', inputs)['need']).toBeCloseTo(16, 9)
    expect(calcOrAbsent('phase-need', { ...inputs, days: '29' })).toBe('the phases have 30 days, the month 29')
    expect(calcOrAbsent('phase-need', { ...inputs, phases: 'young 1 10' })).toContain('“young 1 10” is not a phase')
    expect(calcOrAbsent('phase-need', { ...inputs, phases: ' ' })).not.toHaveProperty('need')
  })
})
