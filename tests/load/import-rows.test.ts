import { describe, expect, it } from 'vitest'
import { csvRows } from '../../src/load/csv.ts'
import { rowsOfFile } from '../../src/load/import-rows.ts'

const read = (text: string) => {
  const found = rowsOfFile({ file: 'survey', text })
  if (!found.ok) throw new Error(found.message)
  return found
}
const refusal = (text: string): string => {
  const found = rowsOfFile({ file: 'survey', text })
  return found.ok ? '' : found.message
}
const collection = (...features: readonly unknown[]): string =>
  JSON.stringify({ type: 'FeatureCollection', features }, undefined, 1)
const point = (properties: object, coordinates: unknown = [-1.61034, 54.97012]) => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Point', coordinates }
})
/** A ten-thousandth of a degree at 45° north, so many times as high. */
const ground = (properties: object, rows = 1) => {
  const [west, south, east, north] = [7, 45, 7.0001, 45 + 0.0001 * rows]
  const ring = [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south]
  ]
  return { type: 'Feature', properties, geometry: { type: 'Polygon', coordinates: [ring] } }
}

describe("a surveyor's CSV", () => {
  it.each([
    ['commas', 'id,where\nVB1,"a, b"\n'],
    ['semicolons, two columns only', 'id;where\nVB1;a, b\n'],
    ['tabs, two columns only', 'id\twhere\nVB1\ta, b\n'],
    ['a byte-order mark and CRLF', '\uFEFFid,where\r\nVB1,"a, b"\r\n'],
    ['line ends of one CR', 'id,where\rVB1,"a, b"\r'],
    ['blank lines, blank columns', '\nid,where,,\n\nVB1,"a, b",,\n,,,\n\n'],
    ['a head in capitals with spaces', ' ID , Where \nVB1,"a, b"\n'],
    ['a cell over two lines', 'id,where\nVB1,"a,\nb"\n'],
    ['control characters', 'id,where\nVB1,"a,\u0000\u001b b\u202e"\n']
  ])('with %s reads the same', (_, text) => {
    const { rows, troubles } = read(text)
    expect(troubles).toEqual([])
    expect(rows.map(({ cells }) => ({ ...cells, where: cells['where']?.replace(/\s+/gu, ' ') }))).toEqual([
      { id: 'VB1', where: 'a, b' }
    ])
  })

  it('knows the line of each row, whatever the line ends, and past cells over several lines', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const text = ['id,where', 'VB1,"x', 'y"', '', 'VB2,z', ''].join(end)
      expect(read(text).rows.map(one => one.line)).toEqual([2, 5])
    }
  })

  it('takes the decimal comma of degrees where semicolons part the cells, and leaves it in amounts to be told of', () => {
    const { rows } = read('id;lat;lon;area\nVB1;54,97012;-1,61034;1,950 m²\n')
    expect(rows[0]?.cells).toEqual({ id: 'VB1', latitude: '54.97012', longitude: '-1.61034', area: '1,950 m²' })
    expect(read('id,lat,lon\nVB1,"54,97012",-1.6\n').rows[0]?.cells['latitude']).toBe('54,97012')
  })

  it('takes the apostrophe off that keeps a cell from being a formula', () => {
    expect(read("id,where\nVB1,'-3 m from the wall\n").rows[0]?.cells['where']).toBe('-3 m from the wall')
  })

  it('tells rows that do not fit by their line: cells too many, too few, quotes that are not closed', () => {
    expect(read('id,where\nVB1,a,b\nVB2\nVB3,"a\n').troubles.map(one => [one.line, one.message])).toEqual([
      [2, 'The row has 3 cells, the first line 2.'],
      [3, 'The row has 1 cell, the first line 2.'],
      [4, 'A quotation mark of this row is not closed, or text follows one that is.']
    ])
  })

  it('refuses a file without rows, with two columns of one meaning, or of a local grid', () => {
    for (const empty of ['', '\uFEFF', 'id,where\n', '\n\n']) expect(refusal(empty)).toBe('The file holds no rows.')
    expect(refusal('id,Name\nVB1,VB1\n')).toBe('Two columns mean "id".')
    expect(refusal('id,Easting,Northing\nVB1,4,5\n')).toBe('Column "easting" is of a local grid.')
  })

  it('has no key that the language itself brings', () => {
    expect(read('id,constructor,__proto__\nVB1,x,y\n').rows[0]?.cells['constructor']).toBe('x')
    expect(Object.keys(read('id,toString\nVB1,x\n').rows[0]?.cells ?? {})).toEqual(['id', 'tostring'])
  })
})

describe("a surveyor's GeoJSON", () => {
  it('takes points, longitude first, a height passed over, whatever properties stand beside', () => {
    const odd = { Name: 'VB1', OBJECTID: 17, desc: { a: 1 }, where: null, Ties: ['4.2 m from post 7', '6 m from curb'] }
    expect(read(collection(point(odd, [-1.61034, 54.97012, 61.3]))).rows[0]?.cells).toEqual({
      id: 'VB1',
      objectid: '17',
      ties: '4.2 m from post 7; 6 m from curb',
      latitude: '54.97012',
      longitude: '-1.61034'
    })
  })

  it('takes one feature alone, and several points that are one', () => {
    expect(read(JSON.stringify(point({ id: 'VB1' }))).rows).toHaveLength(1)
    const several = {
      type: 'Feature',
      properties: { id: 'VB1' },
      geometry: { type: 'MultiPoint', coordinates: [[1, 2]] }
    }
    expect(read(collection(several)).rows[0]?.cells).toMatchObject({ longitude: '1', latitude: '2' })
  })

  it('tells each feature that is none, and each point without degrees, by its line', () => {
    const text = collection(null, 3, 'x', [], point({ id: 'VB1' }, ['-1.6', '54.9']), point({ id: 'VB2' }, null))
    expect(read(text).troubles).toHaveLength(6)
    expect(read(text).troubles.map(one => one.line)).toEqual([4, 5, 6, 7, 8, 21])
  })

  it('says which shapes it passes over', () => {
    const line = { type: 'Feature', properties: { id: 'K1/1' }, geometry: { type: 'LineString', coordinates: [] } }
    const { rows, passedOver } = read(collection(point({ id: 'VB1' }), line, ground({ id: 'VB2' })))
    expect(rows.map(one => Object.keys(one.cells))).toEqual([['id', 'latitude', 'longitude'], ['id'], ['id']])
    expect(passedOver).toEqual(['the LineString in line 17', 'the Polygon in line 27'])
  })

  it('takes the area of a zone from its ground, where the row states none', () => {
    // Lengths of a degree at 45° as published by NGA: 111,132 m of latitude, 78,847 m of longitude: 11.113 m × 7.885 m.
    const { rows, passedOver } = read(
      collection(
        ground({ id: 'K1/1' }),
        ground({ zone: 'Beds', station: 'K1/2', area: '80 m²' }),
        ground({ kind: 'zone', id: 'K1/3' }, 3)
      )
    )
    expect(rows.map(one => one.cells['area'])).toEqual(['87.6 m²', '80 m²', '263 m²'])
    expect(passedOver).toEqual([])
  })

  it('tells of a polygon that encloses no ground', () => {
    const flat = {
      ...ground({ id: 'K1/1' }),
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [1, 2],
            [1, 3],
            [1, 2]
          ]
        ]
      }
    }
    expect(read(collection(flat)).troubles.map(one => one.message)).toEqual([
      'The corners of this polygon enclose no ground.'
    ])
  })

  it.each([
    ['what breaks off', '{"type":"FeatureCollection","features":[', 'The file is not whole JSON.'],
    ['another kind of JSON', '{"rows":[]}', 'The file is not a GeoJSON FeatureCollection.'],
    ['a list', '[]', 'The file is not a GeoJSON FeatureCollection.'],
    ['no features', '{"type":"FeatureCollection","features":[]}', 'The file holds no rows.'],
    [
      'a national grid',
      '{"type":"FeatureCollection","features":[],"crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::27700"}}}',
      'The coordinates are of another reference system.'
    ]
  ])('refuses %s', (_, text, message) => {
    expect(refusal(text)).toBe(message)
  })
})

describe('the rows of a table', () => {
  it('are parted by what stands most often in the first line, outside of quotes', () => {
    const cellsOf = (text: string) => csvRows(text)[0]?.cells
    expect(cellsOf('"a,b,c";d\n')).toEqual(['a,b,c', 'd'])
    expect(cellsOf('a\tb\n')).toEqual(['a', 'b'])
    expect(cellsOf('a')).toEqual(['a'])
  })
})
