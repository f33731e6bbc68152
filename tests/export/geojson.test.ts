import { check } from '@placemarkio/check-geojson'
import { describe, expect, it } from 'vitest'
import { boxesGeojson, dueGeojson } from '../../src/export/geojson.ts'
import { contexts, demoDue } from './due-fixture.ts'

const boxes = boxesGeojson(contexts)
const sites = contexts.map(one => one.site)

describe('GeoJSON', () => {
  it.each([
    ['of sites and boxes', boxes],
    ['of what is due', dueGeojson(demoDue, boxes.features)]
  ])('%s passes an independent reader of RFC 7946', (_, collection) => {
    expect(check(JSON.stringify(collection))).toEqual(JSON.parse(JSON.stringify(collection)))
  })

  it('has every site and every box once, those without a position too', () => {
    const expected = sites.flatMap(site => [site.id, ...site.boxes.map(box => `${site.id}/${box.id}`)])
    expect(boxes.features.map(one => one.id)).toEqual(expected)
  })

  it('puts longitude before latitude, as the site file states them', () => {
    const site = sites.find(one => one.id === 'mercer-row')
    const feature = boxes.features.find(one => one.id === 'mercer-row')
    expect(feature?.geometry?.coordinates.slice(0, 2)).toEqual([site?.location?.longitude, site?.location?.latitude])
  })

  it('gives a box without a position no point, so that nobody digs at that of its site', () => {
    const [context] = contexts
    if (!context) throw new Error('no site')
    const [box] = context.site.boxes
    if (!box) throw new Error('no box')
    const at = { file: '', path: [] }
    const placed = { ...box, position: { at, latitude: 54.970123456, longitude: -1.6 } }
    const bare = { ...box, id: 'bare' }
    delete (bare as { position?: unknown }).position
    const read = boxesGeojson([{ ...context, site: { ...context.site, boxes: [placed, bare] } }]).features.slice(1)
    expect(read.map(one => one.geometry?.coordinates ?? null)).toEqual([[-1.6, 54.9701235], null])
  })

  it('holds nothing private', () => {
    const text = JSON.stringify(boxes) + JSON.stringify(dueGeojson(demoDue, boxes.features))
    for (const word of sites.flatMap(site => site.privateWords)) expect(text).not.toContain(word.text)
  })
})
