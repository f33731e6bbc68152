import { describe, expect, it } from 'vitest'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { publicContext } from '../../src/binder/context.ts'
import { dueItems } from '../../src/binder/due-items.ts'
import { makeBoxPage } from '../../src/binder/make-box-page.ts'
import { makeFleetPage, sortedDue } from '../../src/binder/make-fleet-page.ts'
import { siteSummary } from '../../src/binder/site-summary.ts'
import { makeGonePage } from '../../src/binder/make-gone-page.ts'
import { makeLabelSheet } from '../../src/binder/make-labels.ts'
import { tagQr, tagUrl } from '../../src/binder/tag-url.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'

const assessment = assessFleet('sites', date('2026-05-01'))
const contexts = assessment.sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
const context = (id: string) => {
  const found = contexts.find(one => one.site.id === id)
  if (!found) throw new Error(id)
  return found
}
const boxPage = (site: string, box: string) => {
  const own = context(site)
  const found = own.site.boxes.find(one => one.id === box)
  if (!found?.tag) throw new Error(box)
  return makeBoxPage({ ...found, tag: found.tag }, publicContext(own))
}

describe('a box page', () => {
  it('tells what is wired here, what the meter should read, the battery in a word and the hazard of the road first', () => {
    const page = boxPage('kestrel-cross', 'VB1')
    expect(page.hazardLine).toBeDefined()
    expect(page.wiredHere.map(one => one.station)).toEqual(['K1/1', 'K1/2', 'K1/3', 'K1/4'])
    // 4.2 Ω + 2 × 3 m × 24.5 Ω/km
    expect(page.wiredHere[0]?.loopReading.text).toBe('4.35\u00a0Ω')
    expect(page.batteries[0]).toMatchObject({ controller: 'K1', word: 'OVERDUE', state: 'bad' })
  })

  it('of a box without the controller shows the stations whose valves it holds', () => {
    expect(boxPage('kestrel-cross', 'VB3').wiredHere.map(one => one.zone)).toEqual(['Z4'])
  })

  it('has at most three lines of hazard', () => {
    for (const { site } of contexts)
      for (const box of site.boxes) if (box.tag) expect(boxPage(site.id, box.id).hazards.length).toBeLessThanOrEqual(3)
  })

  it('shows public contacts only', () => {
    const tell = boxPage('kestrel-cross', 'VB1').tell
    expect(tell.map(one => one.role)).toEqual(['owner'])
    expect(tell[0]?.quote).toContain('7KQ3F9X')
  })

  it('says that a box is away and gives it no watering', () => {
    const page = boxPage('mercer-row', 'MR-05')
    expect(JSON.stringify([page.known.items, page.today])).toContain('out of service')
    expect(page.today[0]?.lines.join()).not.toContain('Program A')
  })

  it('warns where another box carries the same tag', () => {
    expect(boxPage('mercer-row', 'MR-12').known.items.join()).toContain('MR-13')
  })

  it('carries no place in a file into the public page', () => {
    expect(JSON.stringify(boxPage('harbour-steps', 'HB1'))).not.toContain('sites/')
  })
})

describe('the code of a tag', () => {
  it('is upper case and small enough for the strongest level', () => {
    const url = tagUrl('https://example.org', '7KQ3F9X')
    expect(url).toBe('HTTPS://EXAMPLE.ORG/B/7KQ3F9X/')
    // 30 characters would fit version 3 at level H (35, ISO/IEC 18004); labels take the version that stands more dirt.
    expect(tagQr(url)).toMatchObject({ version: 14, level: 'H' })
    expect(tagQr(url).moduleMm).toBeGreaterThanOrEqual(0.5)
  })

  it('falls back a level where the address is long', () => {
    expect(tagQr(`HTTPS://${'LONG-NAME.'.repeat(30)}EXAMPLE.ORG/B/7KQ3F9X/`).level).toBe('Q')
  })
})

describe('a lid label', () => {
  it('works with no phone: tag, box, shut-off, stations, battery and coil in words', () => {
    const [label] = makeLabelSheet(publicContext(context('kestrel-cross'))).labels
    expect(label).toMatchObject({ tag: '7KQ3F9X', box: 'VB1', battery: '1 × 9 V alkaline', coil: 'DC latching 2-wire' })
    expect(label?.shutOff).toContain('meter pit')
    expect(label?.stations).toHaveLength(4)
  })

  it('is made for every box with a tag', () => {
    for (const own of contexts)
      expect(makeLabelSheet(publicContext(own)).labels).toHaveLength(own.site.boxes.filter(one => one.tag).length)
  })
})

describe('a tag that no longer stands for a box', () => {
  const entry = { tag: 'ES5ZR42', site: 'kestrel-cross', box: 'VB3', at: { file: '', path: [] } }

  it('leads to the tag that took its place', () => {
    expect(makeGonePage({ ...entry, state: 'replaced', now: 'CCMEC2X' }, 'Kestrel Cross', EN_US).now).toEqual({
      tag: 'CCMEC2X',
      href: '../CCMEC2X/index.html'
    })
  })

  it('says where the box went, that it is out of use, or whom to call', () => {
    expect(makeGonePage({ ...entry, state: 'moved', now: 'south verge' }, 'K', EN_US).text).toContain('south verge')
    expect(makeGonePage({ ...entry, state: 'retired' }, 'K', EN_US).text).toContain('out of use')
    expect(makeGonePage({ ...entry, state: 'live' }, 'K', EN_US).text).toContain('quote the tag')
  })
})

describe('the office', () => {
  const page = makeFleetPage({
    built: contexts.map(one => siteSummary(one, EN_US)),
    left: [],
    on: date('2026-05-01'),
    words: EN_US,
    version: '0'
  })

  it('counts what the sites hold', () => {
    const total = (label: string) => Number(page.totals.find(one => one.label === label)?.value)
    expect(total('Sites')).toBe(contexts.length)
    expect(total('Valve boxes')).toBe(contexts.flatMap(one => one.site.boxes).length)
    expect(total('Errors')).toBe(allFindings(assessment).filter(one => one.severity === 'error').length)
  })

  it('lists what has no date before everything else', () => {
    const items = sortedDue(contexts.flatMap(dueItems))
    const dates = items.map(one => one.dueOn ?? '')
    expect(dates).toEqual([...dates].sort())
    expect(items.some(one => one.state === 'no-date')).toBe(true)
    expect(items[0]?.state).toBe('no-date')
  })

  it('leaves boxes that are away out of what is due', () => {
    const subjects = dueItems(context('mercer-row')).map(one => one.subject)
    for (const away of ['MR-05', 'MR-06', 'MR-11']) expect(subjects).not.toContain(away)
  })

  it('tells of a site that could not be read', () => {
    const broken = makeFleetPage({
      built: [],
      left: [{ id: 'quay', findings: [] }],
      on: date('2026-05-01'),
      words: EN_US,
      version: '0'
    })
    expect(broken.sites[0]).toMatchObject({ id: 'quay', problem: expect.stringContaining('Not built') as unknown })
  })
})
