import { describe, expect, it } from 'vitest'
import type { FigureSpec } from '../../src/binder/blocks.ts'
import type { NeedGivenFigure } from '../../src/binder/figures/need-given.ts'
import { figureSvg } from '../../src/render/figures/figure-svg.ts'
import { WATER_FIGURES } from '../look/water-figures.ts'

const figures = WATER_FIGURES.flatMap(block => (block.kind === 'figure' ? [block.figure] : []))
const count = (svg: string, pattern: RegExp): number => [...svg.matchAll(pattern)].length

const year = (months: NeedGivenFigure['months'], top: number): FigureSpec => ({
  figure: 'need-given',
  title: 'Z1',
  unit: 'mm',
  needLabel: 'needed',
  givenLabel: 'given',
  months,
  top: { value: top, label: `${top} mm` }
})

describe('figures of water', () => {
  it.each(figures)('$title is told by pattern alone, and says its title to those who cannot see it', figure => {
    const svg = figureSvg(figure)
    expect(svg).not.toMatch(/ id=|NaN|Infinity|undefined|#[0-9a-f]{3}| fill="(?!none)/u)
    expect(svg).toContain(`aria-label="${figure.title}"`)
  })

  it('needed is hatched and given is solid, each as high as its share of the scale', () => {
    const svg = figureSvg(year([{ label: 'Jul', need: 100, given: 50 }], 100))
    const heights = [...svg.matchAll(/height="([\d.]+)" class="(outline|solid)"/gu)].map(([, h, kind]) => [
      kind,
      Number(h)
    ])
    // The first of each is the key.
    expect(heights).toEqual([
      ['outline', 8],
      ['solid', 8],
      ['outline', 46],
      ['solid', 23]
    ])
  })

  it('a need that is not known, and a month of nothing, draw no bar', () => {
    const svg = figureSvg(
      year(
        [
          { label: 'Jan', given: 0 },
          { label: 'Jul', need: 0, given: 0 }
        ],
        0
      )
    )
    expect([count(svg, /class="outline"/gu), count(svg, /class="solid"/gu)]).toEqual([1, 1])
  })

  it('a load has its limit as a dashed line and its words apart from each other', () => {
    const svg = figureSvg(figures[0] as FigureSpec)
    expect(count(svg, /class="limit"/gu)).toBe(1)
    const ys = [...svg.matchAll(/<text x="0" y="([\d.]+)" class="small">/gu)].map(([, y]) => Number(y))
    expect(ys).toHaveLength(2)
    expect(Math.abs((ys[0] ?? 0) - (ys[1] ?? 0))).toBeGreaterThanOrEqual(9)
  })

  it('a week has seven rows, and a limit only where something is drawn', () => {
    const svg = figureSvg(figures[1] as FigureSpec)
    expect(count(svg, /class="lane"/gu)).toBe(7)
    // Four nights with water and the key below.
    expect(count(svg, /class="limit"/gu)).toBe(5)
  })
})
