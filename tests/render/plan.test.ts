import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanFigure } from '../../src/binder/figures/plan.ts'
import { figureSvg } from '../../src/render/figures/figure-svg.ts'
import { PATTERNS, hatchPath, insideOf } from '../../src/render/figures/plan-pattern.ts'
import { patternSvg } from '../../src/render/figures/plan-legend.ts'
import { DETAIL, PLAN } from '../look/plan-blocks.ts'

describe('a plan', () => {
  const svg = figureSvg(PLAN)

  it('has its size in millimeters, so that the scale holds on paper', () => {
    expect(svg).toContain('style="width:169mm;height:242mm"')
    expect(svg).toContain('viewBox="0 0 169 242"')
  })

  it('is true to scale: at 1:200 a bar of 5 m is 25 mm, in five parts', () => {
    expect(svg.match(/width="5" height="1.2"/gu)).toHaveLength(5)
    expect(svg.match(/width="7.62" height="1.2"/gu)).toHaveLength(4)
  })

  it('lies with north up: what is farther north is drawn higher, what is farther east more to the right', () => {
    const circles = [...svg.matchAll(/cx="([\d.]+)" cy="([\d.]+)" r="1.1"/gu)].map(([, x, y]) => [Number(x), Number(y)])
    const [seven, eight] = circles
    // lamp post 8 is 12 m east and 5 m north of lamp post 7: 60 mm and 25 mm.
    expect((eight?.[0] ?? 0) - (seven?.[0] ?? 0)).toBeCloseTo(60, 6)
    expect((seven?.[1] ?? 0) - (eight?.[1] ?? 0)).toBeCloseTo(25, 6)
  })

  it('has no id and no number that is none, and a detail has neither legend nor title', () => {
    for (const drawn of [svg, figureSvg(DETAIL)]) expect(drawn).not.toMatch(/ id=|NaN|Infinity|undefined|#[0-9a-f]{3}/u)
    expect(svg).toContain('RECORD DRAWING')
    expect(figureSvg(DETAIL)).not.toContain('RECORD DRAWING')
  })

  it('tells every zone and every tie in words', () => {
    for (const words of ['VB1', 'K1, Z1, 1 splice', 'Z1', 'Z2', '6.5 m', 'lamp post 8', 'Not on this drawing: VB3'])
      expect(svg).toContain(`>${words}<`)
  })

  it('shows the figure of a tie only where the line is long enough for it', () => {
    const short = { ...PLAN, ties: [{ from: { eastM: 8, northM: 7 }, to: { eastM: 8.5, northM: 7 }, text: '0.5 m' }] }
    expect(figureSvg(short)).not.toContain('>0.5 m<')
  })
})

describe('signs of the legend', () => {
  it('show every stroke of their pattern, wherever they stand: a grid has lines both ways', () => {
    const patterns = [...figureSvg({ ...PLAN, legend: gridLegend(7) }).matchAll(/translate\([\d. ]+\)">(.*?)<\/g>/gu)]
    expect(patterns).toHaveLength(7)
    for (const [, inner] of patterns) expect(inner?.match(/ d="M/gu)).toHaveLength(2)
  })

  it('have their words whole where the next column leaves room', () => {
    const text = 'Z4, K1/4, 6.8 L/min, splitter island, drip'
    const legend = {
      ...gridLegend(0),
      areas: [{ pattern: 3, text }],
      symbols: [],
      lines: [{ kind: 'curb', text: 'Curb' }]
    }
    expect(figureSvg({ ...PLAN, legend } as PlanFigure)).toContain(`>${text}<`)
  })
})

const gridLegend = (count: number): NonNullable<PlanFigure['legend']> => ({
  areas: Array.from({ length: count }, (_, index) => ({ pattern: 3, text: `Z${index}` })),
  symbols: [],
  lines: [],
  notes: []
})

describe('patterns', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 }
  ]

  it('all differ, two dozen of them, and then come again', () => {
    const all = PATTERNS.map((_, index) => patternSvg(index))
    expect(new Set(all).size).toBe(PATTERNS.length)
    expect(patternSvg(PATTERNS.length)).toBe(all[0])
    expect(PATTERNS.length).toBeGreaterThanOrEqual(24)
  })

  it('stay inside their shape, at any angle: the strokes together are as long as area by gap', () => {
    const turn = fc.integer({ min: 0, max: 179 })
    fc.assert(
      fc.property(turn, degrees => {
        const strokes = [...hatchPath(square, degrees, 0.1).matchAll(/M(\S+) (\S+)L(\S+) (\S+?)(?=M|$)/gu)].map(match =>
          match.slice(1).map(Number)
        )
        for (const ends of strokes) for (const end of ends) expect(end >= -0.01 && end <= 10.01).toBe(true)
        const long = strokes.reduce((sum, [x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => sum + Math.hypot(x2 - x1, y2 - y1), 0)
        // 100 square millimeters at one stroke in 0.1 mm.
        expect(Math.abs(long - 1000)).toBeLessThan(20)
      })
    )
  })

  it('leave the notch of an L free, and a name stands in the L', () => {
    const corner = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 3 },
      { x: 3, y: 3 },
      { x: 3, y: 10 },
      { x: 0, y: 10 }
    ]
    const inside = insideOf(corner)
    expect(inside.x <= 3 || inside.y <= 3).toBe(true)
    expect(hatchPath(corner, 0, 2).match(/M/gu)).toHaveLength(5)
  })
})
