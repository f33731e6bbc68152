import { check } from '@placemarkio/check-geojson'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { wordFault } from '../../src/checks/run.ts'
import type { LoadedSite } from '../../src/load/loaded.ts'
import { shapesOf } from '../../src/load/plan-shapes.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { baseSite } from '../support/base-site.ts'

const ORIGIN = 'origin: { latitude: 54.97, longitude: -1.61 }'
const drawing = (keys: string, text: string, name = 'plan.geojson'): LoadedSite =>
  loadSite({ ...baseSite(`drawing: { ${keys} }`), plans: [{ file: `sites/base/${name}`, text }] })
const told = ({ faults }: LoadedSite): string[] =>
  faults.map(fault => {
    const { file, line, column } = fault.place
    return `${file}:${line}:${column} ${fault.code} ${wordFault('base', fault, CHECKS).message}`
  })

const ON_EARTH = { latitude: 54.97, longitude: -1.61 }
const feature = (properties: object, type: string, coordinates: unknown): object => ({
  type: 'Feature',
  properties,
  geometry: { type, coordinates }
})
const collection = (...features: readonly object[]): string => JSON.stringify({ type: 'FeatureCollection', features })
const CURB = feature({ kind: 'curb' }, 'LineString', [
  [-1.61, 54.97],
  [-1.6098, 54.9702]
])

describe('the file of a drawing', () => {
  it('lies on the drawing where its degrees are, to a centimeter', () => {
    const [line] = drawing(`${ORIGIN}, file: plan.geojson`, collection(CURB)).site?.drawing?.lines ?? []
    expect(line?.kind).toBe('curb')
    expect(line?.points[0]).toEqual({ eastM: 0, northM: 0 })
    // A degree here: 111,326 m of latitude and 64,037 m of longitude (WGS 84, USGS Professional Paper 1395).
    expect(line?.points[1]?.eastM).toBeCloseTo(0.0002 * 64_037, 2)
    expect(line?.points[1]?.northM).toBeCloseTo(0.0002 * 111_326, 2)
  })

  it('is counted from the location of the site where nothing else is in meters, and boxes in degrees with it', () => {
    const { site } = drawing('file: plan.geojson', collection(CURB))
    expect(site?.drawing?.origin).toMatchObject({ latitude: 54.97, longitude: -1.61 })
  })

  it('may be in feet east and north of the origin', () => {
    const wall = feature({ kind: 'wall' }, 'LineString', [
      [0, 0],
      [10, -100]
    ])
    const { site } = drawing('file: plan.geojson, file-unit: ft', collection(wall))
    expect(site?.drawing?.lines[0]?.points[1]?.eastM).toBeCloseTo(3.048, 9)
    expect(site?.drawing?.lines[0]?.points[1]?.northM).toBeCloseTo(-30.48, 9)
  })

  it('brings points for the ties of boxes, and ground of zones', () => {
    const ring = [
      [
        [-1.61, 54.97],
        [-1.6099, 54.97],
        [-1.6099, 54.9701],
        [-1.61, 54.97]
      ]
    ]
    const post = (name: string, at: readonly number[]) => feature({ kind: 'point', name }, 'Point', at)
    const text = collection(
      post('lamp post 7', [-1.61, 54.97]),
      post('curb', [-1.60988, 54.97]),
      feature({ zone: 'Z1' }, 'Polygon', ring)
    )
    const { site, faults } = drawing(`${ORIGIN}, file: plan.geojson`, text)
    expect(faults).toEqual([])
    if (!site) throw new Error('no site')
    const { marks, areas } = makePlan(site, date('2026-05-01')).drawing
    // 4.2 m from lamp post 7 and 6.0 m from curb, as the box says.
    expect(marks.map(one => [one.of, one.by])).toEqual([['VB1', 'ties']])
    expect(areas.map(one => [one.zone, one.points.length])).toEqual([['Z1', 3]])
  })

  it('is told of at its line and column, and what is good in it is drawn', () => {
    const text = `\uFEFF{ "type": "FeatureCollection", "features": [\r\n${JSON.stringify(CURB)},\r\n  { "type": "Feature",\r\n    "properties": { "kind": "fense" },\r\n    "geometry": null } ] }\r\n`
    const loaded = drawing(`${ORIGIN}, file: plan.geojson`, text)
    expect(told(loaded)).toEqual([
      "sites/base/plan.geojson:4:29 file/plan-file Feature 2: the drawing has no line for 'fense'."
    ])
    expect(loaded.site?.drawing?.lines).toHaveLength(1)
  })

  it('that ends in the middle is told of where it ends', () => {
    const text = '{ "type": "FeatureCollection",\n  "features": ['
    expect(told(drawing(`${ORIGIN}, file: plan.geojson`, text))).toEqual([
      'sites/base/plan.geojson:2:15 file/plan-file The file is not whole JSON from here on.'
    ])
  })

  it('is looked for beside the site file alone', () => {
    for (const name of ['other.geojson', '../base/plan.geojson', '/etc/plan.geojson'])
      expect(told(drawing(`${ORIGIN}, file: ${name}`, collection(CURB)))[0], name).toContain('file/dangling-reference')
  })

  it('of half a megabyte is read, and one sign more is too much', () => {
    const bare = collection(CURB)
    const most = bare + ' '.repeat(512 * 1024 - bare.length)
    expect(told(drawing(`${ORIGIN}, file: plan.geojson`, most))).toEqual([])
    expect(told(drawing(`${ORIGIN}, file: plan.geojson`, `${most} `))[0]).toContain('512 KB is the most')
  })

  it('that cannot be read is told of', () => {
    const plans = [{ file: 'sites/base/plan.geojson', text: '', trouble: 'encoding' as const }]
    const loaded = loadSite({ ...baseSite(`drawing: { ${ORIGIN}, file: plan.geojson }`), plans })
    expect(told(loaded)[0]).toContain('not UTF-8')
  })

  it('takes whatever stands in it without falling over', () => {
    const shapes = ['LineString', 'Polygon', 'MultiPolygon', 'Point', 'GeometryCollection', 7]
    const corners = [null, [], [[]], [[[]]], [[[[]]]], [[1]], [['a', 'b']], {}, [[null, null]]]
    const grid = { by: 'degrees', origin: ON_EARTH, near: ON_EARTH } as const
    for (const type of shapes)
      for (const coordinates of corners)
        for (const kind of ['curb', 'zone', 'point', 'building']) {
          const one = { type: 'Feature', properties: { kind, name: 'x' }, geometry: { type, coordinates } }
          expect(shapesOf(one, 0, grid, { file: '', path: [] }), JSON.stringify(one)).toHaveProperty('details')
        }
    const odd = ['null', '[]', '{"type":"FeatureCollection","features":[null,1,"x",[],{}]}', '{"features":{}}', '']
    for (const text of odd) expect(told(drawing(`${ORIGIN}, file: plan.geojson`, text)).length, text).toBeGreaterThan(0)
  })
})

describe('the file of the demo site', () => {
  const text = readFileSync('sites/kestrel-cross/plan.geojson', 'utf8')

  it('is GeoJSON by another reader', () => {
    expect(check(text).type).toBe('FeatureCollection')
  })
})
