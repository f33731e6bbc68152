import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Block } from '../../src/binder/blocks.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import type { PlanFigure } from '../../src/binder/figures/plan.ts'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { figureSvg } from '../../src/render/figures/figure-svg.ts'
import { planNames } from '../../src/render/figures/plan.ts'
import { cross, isIn, lengthInside, shared } from '../../src/render/figures/plan-geometry.ts'
import { placeNames } from '../../src/render/figures/plan-labels.ts'
import { alongLine, besideMark, inShape } from '../../src/render/figures/plan-places.ts'
import { spreadMarks } from '../../src/render/figures/plan-spread.ts'
import { MARK_MM } from '../../src/render/figures/plan-symbols.ts'
import { placeTies } from '../../src/render/figures/plan-ties.ts'
import { date } from '../../src/units/date.ts'
import { DETAIL, PLAN } from '../look/plan-blocks.ts'

const ON = date('2026-05-01')
/** Less is rounding, mm². */
const NOTHING = 1e-6
const SIZE = { width: 12, height: 4 }
const FRAME = { x: 0, y: 0, width: 100, height: 100 }
const spot = (x: number, y: number) => ({ x, y })
const boxesOf = (...wanted: Parameters<typeof placeNames>[0]) =>
  placeNames(wanted, [], FRAME).flatMap(one => (one ? [one.box] : []))

describe('names on the drawings of the demo sites', () => {
  const figures = assessFleet('sites', ON).sites.flatMap(one =>
    contextOf(one, 'HTTPS://EXAMPLE.ORG').flatMap(context =>
      makeBinder(context).sections.flatMap(({ blocks }) =>
        blocks.flatMap(plansIn).map(plan => [`${context.site.id}, ${plan.title}`, plan] as const)
      )
    )
  )

  it('are looked at on record drawings, details and charts of two sites', () => {
    expect(new Set(figures.map(([name]) => name.split(',')[0])).size).toBe(2)
    expect(figures.length).toBeGreaterThanOrEqual(11)
  })

  it.each([...figures, ['the fixture', PLAN] as const, ['the detail', DETAIL] as const])(
    'never overlap, and none leaves the frame: %s',
    (_, plan) => {
      const names = planNames(plan)
      const { xMm, yMm, widthMm, heightMm } = plan.map
      for (const [index, one] of names.entries()) {
        const said = one.lines.map(line => line.text).join(' / ')
        for (const other of names.slice(index + 1)) expect(shared(one, other), said).toBeLessThan(NOTHING)
        expect(one.x >= xMm && one.y >= yMm, said).toBe(true)
        expect(one.x + one.width <= xMm + widthMm && one.y + one.height <= yMm + heightMm, said).toBe(true)
      }
      expect(planNames(plan)).toEqual(names)
    }
  )
})

describe('symbols on one spot', () => {
  it('are set apart until both are seen, the box staying where ties lead to it; those that only touch stay', () => {
    const at = spot(50, 50)
    const [second, box] = spreadMarks([
      { symbol: 'controller', at: spot(51.4, 48.4) },
      { symbol: 'valve box', at }
    ])
    expect(box).toEqual(at)
    expect(second && Math.max(Math.abs(second.x - 50), Math.abs(second.y - 50))).toBeGreaterThan(2 * MARK_MM)
    const apart = [at, spot(50 + 2 * MARK_MM, 50)]
    expect(spreadMarks(apart.map(one => ({ symbol: 'meter' as const, at: one })))).toEqual(apart)
  })

  it('lead back to their true place, which the legend tells of', () => {
    const [first] = PLAN.marks
    if (!first) throw new Error('no mark')
    const twice = { ...PLAN, marks: [first, { ...first, symbol: 'controller' as const, label: 'K9' }] }
    const legend = PLAN.legend && {
      ...PLAN.legend,
      symbols: [...PLAN.legend.symbols, { symbol: 'aside' as const, text: 'True place' }]
    }
    expect(figureSvg({ ...twice, ...(legend ? { legend } : {}) })).toContain('True place')
    expect(figureSvg({ ...PLAN, ...(legend ? { legend } : {}) })).not.toContain('True place')
  })
})

describe('a name and a pattern', () => {
  const map = { xMm: 0, yMm: 0, widthMm: 100, heightMm: 100 }
  const corner = (eastM: number, northM: number) => ({ eastM, northM })
  const withArea = (points: PlanFigure['areas'][number]['points']): PlanFigure => ({
    ...DETAIL,
    widthMm: 100,
    heightMm: 100,
    map,
    ratio: 1000,
    middle: corner(50, 50),
    lines: [],
    points: [],
    ties: [],
    marks: [{ symbol: 'box', label: 'VB1', ...corner(50, 50) }],
    areas: [{ points, label: '', pattern: 0 }]
  })
  const cleared = (plan: PlanFigure) =>
    planNames(plan).filter(({ x, y }) => figureSvg(plan).includes(`<rect x="${x}" y="${y}"`)).length

  it('keeps off it where there is ground on another side of its mark', () => {
    const plan = withArea([corner(50, 0), corner(100, 0), corner(100, 100), corner(50, 100)])
    expect(planNames(plan)[0]?.leader).toBeUndefined()
    expect(planNames(plan).every(one => one.x + one.width <= 50)).toBe(true)
    expect(cleared(plan)).toBe(0)
  })

  it('stands on a clearing where the pattern is all round', () => {
    const plan = withArea([corner(0, 0), corner(100, 0), corner(100, 100), corner(0, 100)])
    expect(cleared(plan)).toBe(1)
  })
})

function plansIn(block: Block): PlanFigure[] {
  if (block.kind === 'sheet' || block.kind === 'box-find') return [block.figure]
  return block.kind === 'chart' && block.figure ? [block.figure] : []
}

describe('a name beside its mark', () => {
  it('stands to the right where there is room, without a line', () => {
    const [place] = placeNames([besideMark(spot(50, 50), SIZE, 2)], [], FRAME)
    expect(place?.box).toEqual({ x: 52.6, y: 48, ...SIZE })
    expect(place?.leader).toBeUndefined()
  })

  it('gives way to what is there, and a line from the edge of the mark leads to it', () => {
    const box = { x: 38, y: 40, width: 24, height: 20 }
    const [place] = placeNames([besideMark(spot(50, 50), SIZE, 2)], [{ box, weight: 40 }], FRAME)
    expect(place && shared(place.box, box)).toBe(0)
    const { from } = place?.leader ?? { from: spot(0, 0) }
    expect(Math.hypot(from.x - 50, from.y - 50)).toBeCloseTo(2, 9)
  })

  it('keeps off a thick line rather than off a thin one, and stays on the sheet at its corner', () => {
    const stroke = { from: spot(50, 50), to: spot(100, 50) }
    const [place] = placeNames([besideMark(spot(50, 50), SIZE, 2)], [{ stroke, weight: 4 }], FRAME)
    expect(place && lengthInside(stroke, place.box)).toBe(0)
    const [corner] = boxesOf(besideMark(spot(99, 99), SIZE, 2))
    expect(corner && corner.x + corner.width <= 100 && corner.y + corner.height <= 100).toBe(true)
  })

  it('moves for a later one that has nowhere else to stand', () => {
    const only = [{ box: { x: 52.6, y: 48, ...SIZE }, dislike: 0 }]
    const [first, second] = boxesOf(besideMark(spot(50, 50), SIZE, 2), only)
    expect(first && second && shared(first, second)).toBe(0)
    expect(second).toEqual(only[0]?.box)
  })

  it('has no place where nothing names one, and the others keep theirs', () => {
    expect(placeNames([[], besideMark(spot(50, 50), SIZE, 2)], [], FRAME).map(one => one !== undefined)).toEqual([
      false,
      true
    ])
  })

  it('touches no line, thick or thin, while there is a place that touches none', () => {
    const strokes = [40, 46, 54, 60].map(x => ({ from: spot(x, 0), to: spot(x, 100) }))
    const [place] = placeNames(
      [besideMark(spot(50, 50), { width: 14, height: 3 }, 2)],
      strokes.map(stroke => ({ stroke, weight: 4, half: 0.4 })),
      FRAME
    )
    for (const stroke of strokes) expect(place && lengthInside(stroke, place.box)).toBe(0)
  })

  it('never overlaps another while there is room: twelve on a sheet, wherever they are', () => {
    const at = fc.record({ x: fc.integer({ min: 20, max: 80 }), y: fc.integer({ min: 20, max: 80 }) })
    fc.assert(
      fc.property(fc.uniqueArray(at, { minLength: 2, maxLength: 12, selector: ({ x, y }) => `${x} ${y}` }), spots => {
        const names = boxesOf(...spots.map(one => besideMark(one, { width: 8, height: 3 }, 2)))
        for (const [index, one] of names.entries())
          for (const other of names.slice(index + 1)) expect(shared(one, other)).toBeLessThan(NOTHING)
      }),
      { numRuns: 40 }
    )
  })
})

describe('a name in a shape or along a line', () => {
  const shape = [spot(10, 10), spot(60, 10), spot(60, 18), spot(20, 18), spot(20, 60), spot(10, 60)]

  it('stands wholly in a shape that has room for it, whatever its form', () => {
    const [box] = boxesOf(inShape(shape, { width: 8, height: 4 }))
    if (!box) throw new Error('no place')
    for (const x of [box.x, box.x + 8]) for (const y of [box.y, box.y + 4]) expect(isIn(spot(x, y), shape)).toBe(true)
  })

  it('stands beside a line, not on it, and on it where both sides are taken', () => {
    const line = [spot(10, 50), spot(90, 50)]
    const stroke = { from: spot(10, 50), to: spot(90, 50) }
    const beside = placeNames([alongLine(line, SIZE)], [{ stroke, weight: 2 }], FRAME)[0]
    expect(beside && lengthInside(stroke, beside.box)).toBe(0)
    const sides = [
      { x: 0, y: 30, width: 100, height: 17 },
      { x: 0, y: 53, width: 100, height: 17 }
    ].map(box => ({ box, weight: 40 }))
    const on = placeNames([alongLine(line, SIZE)], [...sides, { stroke, weight: 2 }], FRAME)[0]
    expect(on?.box.y).toBe(48)
  })
})

describe('the figure on a tie', () => {
  const tie = { from: spot(10, 50), to: spot(50, 50), text: '6.5 m' }

  it('stands at its middle, and makes way for what is there', () => {
    expect(placeTies([tie], [])[0]?.at).toEqual(spot(30, 50))
    expect(placeTies([tie], [{ x: 24, y: 46, width: 8, height: 6 }])[0]?.at.x).not.toBe(30)
  })

  it('is left out of a tie that is no longer than the figure and the marks at its ends', () => {
    const short = placeTies([{ ...tie, to: spot(20, 50) }], [])[0]
    expect([short?.text, short?.covers]).toEqual(['', []])
  })
})

describe('strokes and boxes', () => {
  const box = { x: 10, y: 10, width: 10, height: 10 }

  it('a stroke is measured inside a box: through it, into it, along its edge and past it', () => {
    const inside = (...ends: readonly [number, number, number, number]) =>
      lengthInside({ from: spot(ends[0], ends[1]), to: spot(ends[2], ends[3]) }, box)
    expect(inside(0, 15, 30, 15)).toBeCloseTo(10, 9)
    expect(inside(15, 15, 30, 15)).toBeCloseTo(5, 9)
    expect(inside(0, 0, 30, 30)).toBeCloseTo(Math.hypot(10, 10), 9)
    expect([inside(0, 5, 30, 5), inside(0, 15, 9, 15), inside(15, 15, 15, 15)]).toEqual([0, 0, 0])
  })

  it('strokes that only touch do not cross', () => {
    const flat = { from: spot(0, 0), to: spot(10, 0) }
    expect(cross(flat, { from: spot(5, -5), to: spot(5, 5) })).toBe(true)
    expect(cross(flat, { from: spot(5, 0), to: spot(5, 5) })).toBe(false)
    expect(cross(flat, { from: spot(0, 1), to: spot(10, 1) })).toBe(false)
  })
})
