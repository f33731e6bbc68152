import { describe, expect, it } from 'vitest'
import type { PressureWayFigure } from '../../src/binder/figures/pressure-way.ts'
import { pressureWayFigure } from '../../src/render/figures/pressure-way.ts'

const way = (values: readonly number[], needed?: number): PressureWayFigure => ({
  figure: 'pressure-way',
  title: 'Pressure along the way',
  points: values.map((value, index) => ({ label: `part ${index}`, value, text: String(value) })),
  ...(needed === undefined ? {} : { needed: { value: needed, label: `needed ${needed}` } })
})

const heights = (svg: string): number[] => [...svg.matchAll(/<circle[^>]* cy="([\d.]+)"/gu)].map(([, y]) => Number(y))

describe('the pressure along the way', () => {
  it('falls as its figures fall, each named and numbered, zero on the base line', () => {
    const svg = pressureWayFigure(way([60, 45, 45, 0], 30))
    const [first = 0, second = 0, third = 0, last = 0] = heights(svg)
    expect(first).toBeLessThan(second)
    expect(second).toBe(third)
    expect((last - second) / (last - first)).toBeCloseTo(45 / 60, 3)
    for (const text of ['>60<', '>45<', '>0<', '>part 3<', '>needed 30<']) expect(svg).toContain(text)
  })

  it('stays on the paper where the pressure is used up, and with one point or none', () => {
    for (const svg of [way([40, -12], 90), way([40]), way([])].map(pressureWayFigure)) {
      expect(svg).not.toMatch(/NaN|Infinity|undefined/u)
      expect(heights(svg).every(y => y >= 0 && y <= 144)).toBe(true)
    }
  })
})
