import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FigureSpec } from '../../src/binder/blocks.ts'
import { figureSvg } from '../../src/render/figures/figure-svg.ts'
import { escapeXml, hatch, monoWidth, rounded, stack } from '../../src/render/svg.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'
import { BINDER_US } from '../look/binder-us.ts'

type Strip = Extract<FigureSpec, { figure: 'day-strip' }>

const strip: Strip = {
  figure: 'day-strip',
  title: 'Watering day',
  fromMinute: 720,
  toMinute: 2160,
  hours: [{ minute: 720, label: '12:00' }],
  windows: [{ from: 1380, to: 1740, label: 'window' }],
  lanes: [{ label: '1', bars: [{ from: 1390, to: 1415, label: 'A' }] }]
}
const months = (values: readonly number[]): FigureSpec => ({
  figure: 'months',
  title: 'Year',
  unit: 'min',
  months: values.map((value, index) => ({ label: `M${index}`, value, text: String(value) }))
})
const attribute = (svg: string, pattern: RegExp): number[] =>
  [...svg.matchAll(pattern)].map(([, value]) => Number(value))

describe('figures', () => {
  const all = [BINDER_METRIC, BINDER_US].flatMap(binder =>
    binder.sections.flatMap(section => section.blocks.flatMap(block => (block.kind === 'figure' ? [block.figure] : [])))
  )

  it.each(all)('$title draws without an id, a colour or a number that is none', figure => {
    const svg = figureSvg(figure)
    expect(svg).not.toMatch(/ id=|NaN|Infinity|undefined|#[0-9a-f]{3}/u)
    expect(svg).toContain(`aria-label="${'alt' in figure ? figure.alt : figure.title}"`)
  })

  it('months: the number stands above every bar, zero too, and the tallest bar is the largest value', () => {
    const svg = figureSvg(months([0, 50, 100]))
    expect([...svg.matchAll(/class="number"[^>]*>([^<]*)</gu)].map(([, text]) => text)).toEqual(['0', '50', '100'])
    expect(attribute(svg, /height="([\d.]+)" class="outline"/gu)).toEqual([48, 96])
  })

  it('months: a year of nothing is a line with zeros and no bars', () => {
    const svg = figureSvg(months(Array.from({ length: 12 }, () => 0)))
    expect(svg).not.toContain('outline')
    expect(svg.match(/class="number"/gu)).toHaveLength(12)
  })

  it('months: no month at all still draws', () => {
    expect(figureSvg(months([]))).toContain('<svg')
  })

  it('day strip: a bar lies where its minutes are', () => {
    const bars = (from: number, to: number) =>
      figureSvg({ ...strip, lanes: [{ label: '1', bars: [{ from, to, label: 'A' }] }] })
    const x = (svg: string) => attribute(svg, /<rect x="([\d.]+)"[^>]*class="solid"/gu)[0]
    expect(x(bars(720, 730))).toBe(104)
    expect(x(bars(1440, 1450))).toBe(284)
    expect(attribute(bars(720, 2160), /width="([\d.]+)" height="11" class="solid"/gu)[0]).toBe(360)
  })

  it('day strip: a run of half a minute can still be seen', () => {
    const svg = figureSvg({ ...strip, lanes: [{ label: '1', bars: [{ from: 1390, to: 1390.5, label: 'A' }] }] })
    expect(attribute(svg, /width="([\d.]+)" height="11" class="solid"/gu)[0]).toBeGreaterThanOrEqual(1.2)
  })

  it('day strip: no word is lost and none covers another, however close the runs', () => {
    const bars = Array.from({ length: 9 }, (_, index) => ({
      from: 1390 + index * 2,
      to: 1391 + index * 2,
      label: `run ${index}`
    }))
    const svg = figureSvg({ ...strip, lanes: [{ label: '1', bars }] })
    const placed = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" class="small">([^<]*)</gu)].map(
      ([, x, y, text]) => ({
        left: Number(x),
        right: Number(x) + monoWidth(text ?? '', 7),
        y: Number(y),
        text
      })
    )
    expect(placed.map(one => one.text)).toEqual(['window', ...bars.map(bar => bar.label)])
    for (const [index, a] of placed.entries())
      for (const b of placed.slice(index + 1)) expect(a.y !== b.y || a.right <= b.left || b.right <= a.left).toBe(true)
  })

  it('day strip: words at the end of the day stay inside the drawing', () => {
    const svg = figureSvg({
      ...strip,
      lanes: [{ label: '1', bars: [{ from: 2150, to: 2160, label: 'late at night' }] }]
    })
    for (const [, x, text] of svg.matchAll(/<text x="([\d.]+)"[^>]*class="small">([^<]*)</gu))
      expect(Number(x) + monoWidth(text ?? '', 7)).toBeLessThanOrEqual(480)
  })

  it('day strip: sixty lanes and none draw', () => {
    const lanes = Array.from({ length: 60 }, (_, index) => ({ label: `P1/${index}`, bars: [] }))
    expect(figureSvg({ ...strip, lanes }).match(/class="lane"/gu)).toHaveLength(60)
    expect(figureSvg({ ...strip, lanes: [], windows: [] })).toContain('<svg')
  })

  it('wire run: the words of a short segment stand between the terminals', () => {
    const svg = figureSvg({
      figure: 'wire-run',
      title: 'Run',
      from: 'P1',
      to: 'Z6',
      segments: [
        { label: '18 AWG, 380 ft', share: 0.98 },
        { label: '18 AWG, 30 ft', share: 0.02 }
      ],
      splices: 1,
      verdict: 'FAILS',
      state: 'bad'
    })
    const [, x] = /<text x="([\d.]+)"[^>]*>18 AWG, 30 ft</u.exec(svg) ?? []
    expect(Number(x) + monoWidth('18 AWG, 30 ft', 7) / 2).toBeLessThanOrEqual(480 - 64)
  })

  it('wire run: segments are as long as their share, whatever the shares add up to', () => {
    const run = (shares: readonly number[]): FigureSpec => ({
      figure: 'wire-run',
      title: 'Run',
      from: 'K1',
      to: 'Z4',
      segments: shares.map(share => ({ label: 'x', share })),
      splices: 1,
      verdict: 'PASSES',
      state: 'good'
    })
    const ends = (svg: string) =>
      [...svg.matchAll(/M([\d.]+) 27L([\d.]+) 27/gu)].map(([, from, to]) => [Number(from), Number(to)])
    expect(ends(figureSvg(run([96, 32])))).toEqual([
      [64, 328],
      [328, 416]
    ])
    expect(ends(figureSvg(run([1])))).toEqual([[64, 416]])
    expect(figureSvg(run([]))).toContain('1 splice<')
    expect(figureSvg(run([0, 0]))).not.toContain('NaN')
  })
})

describe('pieces of a drawing', () => {
  it('hatching stays inside its box', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 2, max: 9 }),
        (width, height, gap) => {
          const path = hatch({ x: 10, y: 20, width, height }, gap)
          for (const [, x, y] of path.matchAll(/[ML]([\d.-]+) ([\d.-]+)/gu)) {
            expect(Number(x)).toBeGreaterThanOrEqual(10)
            expect(Number(x)).toBeLessThanOrEqual(10 + width)
            expect(Number(y)).toBeGreaterThanOrEqual(20)
            expect(Number(y)).toBeLessThanOrEqual(20 + height)
          }
        }
      )
    )
  })

  it('spans in one row never meet', () => {
    const spans = fc.array(
      fc.record({ from: fc.integer({ min: 0, max: 100 }), length: fc.integer({ min: 1, max: 40 }) })
    )
    fc.assert(
      fc.property(spans, list => {
        const placed = list.map(({ from, length }) => ({ from, to: from + length })).sort((a, b) => a.from - b.from)
        const rows = stack(placed, 2)
        for (const [i, a] of placed.entries())
          for (const [j, b] of placed.entries())
            if (i < j && rows[i] === rows[j]) expect(a.to + 2).toBeLessThanOrEqual(b.from)
      })
    )
  })

  it('text is escaped and numbers are short', () => {
    expect(escapeXml('<a & "b">')).toBe('&#60;a &#38; &#34;b&#34;&#62;')
    expect([1 / 3, -0.001, 2, 1e-9].map(rounded)).toEqual(['0.33', '0', '2', '0'])
  })
})
