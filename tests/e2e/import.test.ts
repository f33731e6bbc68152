import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { ON, underlid, workFolder } from './support.ts'

const folder = workFolder(['kestrel-cross'])
const site = join(folder, 'sites/kestrel-cross/site.md')
const text = () => readFileSync(site, 'utf8')
const importing = (name: string, content: string | Buffer, ...args: string[]) => {
  writeFileSync(join(folder, name), content)
  return underlid(['import', name, '--site', 'kestrel-cross', '--on', ON, ...args], folder)
}
/** Lines of the second text that the first has not. */
const added = (before: string, after: string) => after.split('\n').filter(line => !before.split('\n').includes(line))

const GOOD = [
  'kind,id,where,lat,lon,ties,station,box,area,surveyor',
  'box,VB1,,54.97012,-1.61034,,,,,x',
  'box,VB4,"west splitter, by the sign",54.97013,-1.61035,1.2 m from sign; 3.4 m from curb,,,,x',
  'valve,,,,,,K1/2,VB4,141 m²,x',
  ''
].join('\r\n')

describe('underlid import', () => {
  it('shows the change and writes nothing until it is asked to', () => {
    const before = text()
    const { out, code } = importing('boxes.csv', GOOD)
    expect(code).toBe(0)
    expect(out).toContain('+ box VB4')
    expect(out).toContain('box: VB2 -> VB4')
    expect(out).toContain('Columns left out: surveyor')
    expect(out).toContain('Nothing was written yet')
    expect(text()).toBe(before)
  })

  it('refuses the whole file for one row that does not fit, with its line and what to do', () => {
    const before = text()
    const bad = `${GOOD}box,VB5,x,54.97,,,,,,\r\nbox,VB6,x,-1.61,54.97,,,,,\r\nvalve,,,,,,K9/1,VB1,,\r\nzone,,,,,,K1/3,,240,\r\nbox,VB4,y,,,,,,,\r\n`
    const { err, code } = importing('bad.csv', bad, '--write')
    expect(code).toBe(2)
    expect(err).toContain('bad.csv:5  VB5 has only one of latitude and longitude.')
    expect(err).toMatch(/bad\.csv:6 {2}VB6 would stand \d+ km from its site/u)
    expect(err).toContain('bad.csv:8  K1/3: "area: 240" has no unit.')
    expect(err).toContain('bad.csv:9  VB4 stands in line 3 already.')
    expect(text()).toBe(before)
  })

  it('refuses what the site as a whole would not take', () => {
    const before = text()
    const { err, code } = importing('dangling.csv', 'station,box\nK9/1,VB1\n', '--write')
    expect([code, err]).toEqual([2, expect.stringContaining('dangling.csv:2  K9/1: there is no controller K9')])
    expect(text()).toBe(before)
  })

  it('refuses a private word that a scan would show, without saying it, and text that is not UTF-8', () => {
    const before = text()
    const leak = importing('leak.csv', 'id,where\nVB2,by the wall\nVB1,"behind the gate, code 7719"\n', '--write')
    expect([leak.code, leak.err]).toEqual([2, expect.stringContaining('leak.csv:3  This text is public')])
    expect(leak.err).not.toContain('7719')
    for (const encoding of ['latin1', 'utf16le'] as const) {
      const { code, err } = importing('other.csv', Buffer.from('\uFEFFid,where\nVB1,café\n', encoding), '--write')
      expect([code, err]).toEqual([2, expect.stringContaining('is not text in UTF-8')])
    }
    expect(text()).toBe(before)
  })

  it('writes it, and every other line, comment and order stay', () => {
    const before = text()
    expect(importing('boxes.csv', GOOD, '--write').code).toBe(0)
    const after = text()
    expect(added(before, after).map(line => line.trim())).toEqual([
      'position: { latitude: 54.97012, longitude: -1.61034 }',
      '- id: VB4',
      'where: "west splitter, by the sign"',
      'ties: [1.2 m from sign, 3.4 m from curb]',
      'position: { latitude: 54.97013, longitude: -1.61035 }',
      expect.stringContaining('valve: { box: VB4'),
      'area: 141 m²'
    ])
    expect(added(after, before)).toHaveLength(2)
    const again = importing('boxes.csv', GOOD, '--write')
    expect(again.out).toContain('0 new, 0 changed, 3 as they are')
    expect(text()).toBe(after)
  })

  it('takes points of GeoJSON, longitude first, and refuses another reference system', () => {
    const point = {
      type: 'Feature',
      id: 'VB2',
      geometry: { type: 'Point', coordinates: [-1.6105, 54.9699] },
      properties: {}
    }
    const collection = { type: 'FeatureCollection', features: [point] }
    expect(importing('b.geojson', JSON.stringify(collection), '--write').code).toBe(0)
    expect(text()).toContain('position: { latitude: 54.9699, longitude: -1.6105 }')
    const crs = { type: 'name', properties: { name: 'EPSG:27700' } }
    const { err, code } = importing('c.geojson', JSON.stringify({ ...collection, crs }))
    expect([code, err]).toEqual([2, expect.stringContaining('WGS 84')])
    expect(importing('d.csv', 'id,easting,northing\nVB1,425000,565000\n').err).toContain('local grid')
  })
})
