import { describe, expect, it } from 'vitest'
import type { BatteryYearFigure } from '../../src/binder/figures/battery-year.ts'
import { figureSvg } from '../../src/render/figures/figure-svg.ts'

const year: BatteryYearFigure = {
  figure: 'battery-year',
  title: 'K1: fitted 2026-02-02, due 2026-07-18.',
  unit: 'pulses a month',
  months: [0, 100, 50].map((pulses, index) => ({ label: `M${index}`, pulses, text: String(pulses) })),
  seasons: [{ from: 0.5, to: 1 }],
  seasonLabel: 'watering season',
  marks: [
    { kind: 'fitted', at: 0, label: 'fitted 2026-02-02' },
    { kind: 'visit', at: 0.5, label: 'start-up visit 2026-03-01' },
    { kind: 'due', at: 0.52, label: 'due 2026-07-18' }
  ]
}

const numbers = (svg: string, pattern: RegExp): number[] => [...svg.matchAll(pattern)].map(([, value]) => Number(value))

describe('the battery’s year', () => {
  it('has a bar for each month with pulses, twice as high for twice as many, and the name of every month', () => {
    const svg = figureSvg(year)
    const heights = numbers(svg, /height="([\d.]+)" class="solid"/gu)
    expect(heights).toHaveLength(2)
    expect(heights[0]).toBeCloseTo(2 * (heights[1] ?? 0), 1)
    for (const { label } of year.months) expect(svg).toContain(`>${label}<`)
  })

  it('of three years names every month, and each year below its first, all clear of each other', () => {
    const months = Array.from({ length: 36 }, (_, index) => ({
      label: 'Mar',
      pulses: 1,
      text: '1',
      ...(index % 12 === 10 || index === 0 ? { year: '2027' } : {})
    }))
    const names = [
      ...figureSvg({ ...year, months }).matchAll(/<text x="([\d.]+)"[^>]*class="month"[^>]*>([^<]*)</gu)
    ].map(([, x, name = '']) => ({ x: Number(x), half: (name.length * 0.6 * 6.6) / 2, name }))
    for (const [name, count] of [
      ['Mar', 36],
      ['2027', 4]
    ] as const) {
      const row = names.filter(one => one.name === name).sort((a, b) => a.x - b.x)
      expect(row).toHaveLength(count)
      expect((row[0]?.x ?? 0) - (row[0]?.half ?? 0)).toBeGreaterThanOrEqual(4)
      for (const [index, one] of row.slice(1).entries())
        expect(one.x - one.half).toBeGreaterThan((row[index]?.x ?? 0) + (row[index]?.half ?? 0))
    }
  })

  it('no upright crosses a figure or the words of a day: they are drawn after all of them', () => {
    const svg = figureSvg(year)
    const uprights = [...svg.matchAll(/<path d="M([\d.]+) [\d.]+L\1 [\d.]+" class="(?:outline|heavy)/gu)].map(
      one => one.index
    )
    expect(uprights).toHaveLength(3)
    for (const words of ['>100<', '>50<', '>fitted ']) expect(svg.indexOf(words)).toBeGreaterThan(Math.max(...uprights))
  })

  it('names every day that matters, and the words of days close together stand in rows of their own', () => {
    const svg = figureSvg(year)
    const rows = year.marks.map(
      ({ label }) => numbers(svg, new RegExp(`y="([\\d.]+)" class="small">${label}<`, 'gu'))[0]
    )
    expect(rows.every(row => row !== undefined)).toBe(true)
    expect(rows[1]).not.toBe(rows[2])
    expect(svg).toContain('outline dashed')
    expect(svg).toContain('class="heavy"')
  })

  it('keeps the words of a day at either edge inside the figure', () => {
    const svg = figureSvg({ ...year, marks: [{ kind: 'due', at: 1, label: 'due 2026-07-18' }] })
    const [x] = numbers(svg, /x="([\d.]+)" y="[\d.]+" class="small" text-anchor="end">due/gu)
    expect(x).toBe(476)
  })

  it('draws a year without pulses, without a season and without a month', () => {
    const empty = figureSvg({ ...year, months: [], seasons: [], marks: [] })
    expect(empty).toContain('<svg')
    expect(empty).not.toMatch(/ id=|NaN|Infinity|undefined|#[0-9a-f]{3}/u)
    expect(figureSvg(year)).not.toMatch(/ id=|NaN|Infinity|undefined|#[0-9a-f]{3}/u)
  })
})
