import { describe, expect, it } from 'vitest'
import { GAP_MARK, gapsIn, newSiteText } from '../../src/load/new-site.ts'
import { loadSite } from '../../src/load/site.ts'

const load = (text: string) => loadSite({ id: 'quay', files: [{ file: 'sites/quay/site.md', text }], shared: [] })

describe('a new site file', () => {
  it.each(['us', 'metric'] as const)(
    'in %s units loads without a fault, and supplies nothing that nobody said',
    units => {
      const { site, faults } = load(newSiteText({ title: 'Quay Street', units, tag: '7KQ3F9X', place: 'planter' }))
      expect(faults).toEqual([])
      expect(site).toMatchObject({ title: 'Quay Street', units, place: 'planter', status: 'planned' })
      expect(site?.paper).toBe(units === 'us' ? 'Letter' : 'A4')
      expect(site?.boxes.map(box => [box.id, box.tag, box.where])).toEqual([['VB1', '7KQ3F9X', undefined]])
      expect(site?.controllers[0]?.battery).toBeUndefined()
      expect(site?.stations[0]?.wire).toEqual([])
      expect(site?.season).toBeUndefined()
    }
  )

  it('takes any title', () => {
    for (const title of ['Quay: north', '# 1', '"Quoted"', "O'Neill's", '- dash', '7', 'yes', 'a\nb', '水景'])
      expect(load(newSiteText({ title, units: 'metric' })).site?.title).toBe(title.replace('\n', ' '))
  })

  it('marks each gap in a line of its own', () => {
    const text = newSiteText({ title: 'Quay', units: 'us' })
    const gaps = gapsIn(text)
    expect(gaps.length).toBeGreaterThan(30)
    expect(text.split('\n')[(gaps[0]?.line ?? 0) - 1]).toContain(GAP_MARK)
    expect(gapsIn(text.replaceAll('\n', '\r\n'))).toEqual(gaps)
  })

  it('shows examples that load when they take the place of the gap', () => {
    for (const units of ['us', 'metric'] as const) {
      const text = newSiteText({ title: 'Quay', units })
      const pattern = new RegExp(
        `^(\\s*(?:- )?[a-z-]+:) # ${GAP_MARK} ((?:\\{.*\\}|\\[.*\\])(?=,|$)|[^,\\n]*\\d[^,\\n]*)(?:,.*)?$`,
        'gmu'
      )
      const examples = [...text.matchAll(pattern)]
      const filled = text.replace(pattern, '$1 $2').replace(/degrees \w+, /gu, '')
      expect(examples.length).toBeGreaterThan(15)
      expect(load(filled).faults.map(fault => [fault.place.text.trim(), fault.code])).toEqual([])
    }
  })

  it('has a program to copy that loads', () => {
    const text = newSiteText({ title: 'Quay', units: 'us' })
    const uncommented = text
      .replace(/programs: #.*\n\s+# - /u, 'programs:\n      - ')
      .replace(', 2: 2 x 6 min soak 30 min', '')
    expect(uncommented).not.toBe(text)
    expect(load(uncommented).faults).toEqual([])
    expect(load(uncommented).site?.controllers[0]?.programs.length).toBe(1)
  })
})
