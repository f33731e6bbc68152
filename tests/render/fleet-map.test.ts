import { describe, expect, it } from 'vitest'
import type { MapMark } from '../../src/binder/make-map-page.ts'
import { fleetMap } from '../../src/render/fleet-map.ts'
import { EN_US } from '../../src/words/words.ts'

const mark = (title: string, latitude: number, longitude: number, state: MapMark['state'] = 'good'): MapMark => ({
  title,
  href: `${title.toLowerCase()}/index.html`,
  latitude,
  longitude,
  state,
  word: 'as it is'
})
const map = (...marks: readonly MapMark[]) => fleetMap(marks, EN_US.fleet)
const namesOn = (svg: string) => [...svg.matchAll(/class="map-name"[^>]*>([^<]*)</gu)].map(([, name]) => name)

describe('the map of all sites', () => {
  it('draws nothing without a place, and one place alone', () => {
    expect(map()).toBe('')
    expect(namesOn(map(mark('Quay', 54.97, -1.61)))).toEqual(['Quay'])
    expect(map(mark('Quay', 54.97, -1.61))).not.toContain('NaN')
  })

  it('puts north up and east to the right, on the southern half and beside the date line too', () => {
    for (const [latitude, longitude] of [
      [54, -1],
      [-33, 151],
      [0, 0],
      [-17, 179]
    ] as const) {
      const svg = map(mark('South', latitude, longitude), mark('North', latitude + 0.5, longitude + 0.5))
      const [south, north] = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/gu)].map(([, x, y]) => [
        Number(x),
        Number(y)
      ])
      expect(north?.[0]).toBeGreaterThan(south?.[0] ?? NaN)
      expect(north?.[1]).toBeLessThan(south?.[1] ?? NaN)
    }
  })

  it('keeps a mark and a link for each site, and leaves out names that would cover another', () => {
    const marks = Array.from({ length: 400 }, (_, n) =>
      mark(`Site ${n}`, 50 + (n % 20) * 0.001, Math.floor(n / 20) * 0.001)
    )
    const svg = map(...marks)
    expect([...svg.matchAll(/<circle /gu)]).toHaveLength(400)
    const boxes = [
      ...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" class="map-name" text-anchor="(\w+)">([^<]*)</gu)
    ].map(([, x, y, anchor, name]) => {
      const width = (name ?? '').length * 7.5
      const left = { start: 0, middle: width / 2, end: width }[anchor ?? ''] ?? NaN
      return { x: Number(x) - left, y: Number(y), width }
    })
    expect(boxes.length).toBeGreaterThan(20)
    expect(boxes.length).toBeLessThan(400)
    const cover = boxes.some((a, i) =>
      boxes.slice(i + 1).some(b => Math.abs(a.y - b.y) < 15 && a.x < b.x + b.width && b.x < a.x + a.width)
    )
    expect(cover).toBe(false)
  })

  it('tells states apart by shape, and writes names harmlessly', () => {
    const svgs = (['bad', 'soon', 'unknown', 'good'] as const).map(state => map(mark('A', 50, 1, state)))
    expect(new Set(svgs).size).toBe(4)
    expect(map(mark('<b>', 50, 1))).not.toContain('<b>')
  })

  it('has a scale bar that is true: a degree of latitude is 111 km', () => {
    const svg = map(mark('A', 0, 0), mark('B', 1, 0))
    const [, km = ''] = />(\d+)\u00a0km at 0|>(\d+)\u00a0km at 1/u.exec(svg) ?? []
    const [, length = ''] = /v5h([\d.]+)v-5/u.exec(svg) ?? []
    const ys = [...svg.matchAll(/<circle cx="[\d.]+" cy="([\d.]+)"/gu)].map(([, y]) => Number(y))
    const perKm = Math.abs((ys[0] ?? 0) - (ys[1] ?? 0)) / 111.2
    // The mean radius of the earth on one side, degrees on a plane on the other: within one in a hundred.
    expect(Number(length) / Number(km)).toBeCloseTo(perKm, 1)
  })
})
