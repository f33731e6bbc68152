import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { PAGES, renderPage } from '../look/render-all.ts'
import { idsOf, textOf } from '../look/text-of.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'
import { BOX_METRIC, BOX_US, TAG_ENTRY } from '../look/box-pages.ts'
import { FINDINGS, LABELS_METRIC, SITE } from '../look/sheets.ts'

const rendered = PAGES.map(({ name, template, view, kind }) => ({ name, view, kind, html: renderPage(template, view) }))

describe.each(rendered)('the page $name', ({ html, view, kind }) => {
  it('prints no value that is not there', () => {
    expect(textOf(html)).not.toMatch(/undefined|\[object|NaN|\bnull\b/u)
  })

  it('says its language and has a title', () => {
    expect(html).toContain(`<html lang="${view.language}">`)
    expect(html).toMatch(/<title>[^<]+<\/title>/u)
  })

  it('uses no id twice, and every link within it leads somewhere', () => {
    const ids = idsOf(html)
    expect(new Set(ids).size).toBe(ids.length)
    for (const [, target] of html.matchAll(/ href="?#([^"\s>]*)/gu)) expect(ids).toContain(target)
    for (const [, target] of html.matchAll(/data-target="?([^"\s>]*)/gu)) expect(ids).toContain(target)
  })

  it('asks nobody for a file: styles, scripts and fonts are inside', () => {
    expect(html).not.toMatch(
      /<link\b(?! rel="?icon"? href="?data:,)|<script[^>]* src=(?!"search\.js")|@import|<iframe/u
    )
    const fetched = [...html.matchAll(/url\(\s*["']?([^"')]*)/gu)].map(([, url]) => url ?? '')
    for (const url of fetched) expect(url).toMatch(/^data:/u)
    for (const [, source] of html.matchAll(/<img[^>]* src="([^"]*)"/gu)) expect(source).toMatch(/^data:/u)
  })

  it('has one first-rank heading before any other', () => {
    expect([...html.matchAll(/<h([1-6])/gu)][0]?.[1]).toBe('1')
    if (kind !== 'print') expect([...html.matchAll(/<h1/gu)]).toHaveLength(1)
  })
})

describe('templates', () => {
  it('throw on a value that a view forgot, rather than leave a hole', () => {
    const { subtitle: _, ...broken } = BINDER_METRIC
    expect(() => renderPage('pages/binder.njk', broken)).toThrow(/undefined/u)
  })

  it('show what people wrote as they wrote it, and run none of it', () => {
    const html = renderPage('pages/box-page.njk', {
      ...BOX_METRIC,
      box: '<img src=x onerror=alert(1)>',
      site: { id: 'x', title: '{{ 7 * 7 }} </script> & "quoted"' }
    })
    expect(html).not.toContain('<img src=x')
    expect(textOf(html)).toContain('{{ 7 * 7 }} </script> & "quoted"')
    expect(html.match(/<script/gu)).toHaveLength(2)
    expect(html.match(/<\/script>/gu)).toHaveLength(2)
  })
})

describe('the box page', () => {
  const order = [
    'right-box',
    'stop-water',
    'hazards',
    'wired',
    'readings',
    'battery',
    'today',
    'known',
    'tell',
    'trust',
    'program',
    'safety',
    'visit'
  ]

  it('keeps the order in which a technician needs it', () => {
    const html = renderPage('pages/box-page.njk', BOX_METRIC)
    expect(idsOf(html).filter(id => order.includes(id))).toEqual(order)
    expect(html.indexOf('hazard-line')).toBeLessThan(html.search(/class="?plate/u))
  })

  it('says all of it without script', () => {
    const bare = textOf(renderPage('pages/box-page.njk', BOX_METRIC))
    const said = ['7KQ3F9X', 'LIVE TRAFFIC', 'quarter turn clockwise', 'OVERDUE', 'No watering on this day.', '4.35 Ω']
    for (const words of [...said, 'Volts under load', 'Quote 7KQ3F9X', '2 x 6 min soak 30 min'])
      expect(bare).toContain(words)
  })

  it('weighs less than 60 KB without its photographs, and 20 KB compressed, a box of six stations and eight cautions too', () => {
    const photos = /data:image\/svg\+xml,[^"]*/gu
    const [station] = BOX_METRIC.wiredHere
    const twice = [1, 2].flatMap(() => BOX_METRIC.cautions)
    const heavy = {
      ...BOX_METRIC,
      wiredHere: [1, 2, 3, 4, 5, 6].map(number => ({ ...station, station: `K1/${number}` })),
      // As long as the longest of a real site.
      cautions: twice.map(block => ({ ...block, deference: block.deference.padEnd(450, ' and so on') }))
    }
    for (const view of [BOX_METRIC, BOX_US, heavy]) {
      const html = renderPage('pages/box-page.njk', view).replace(photos, '')
      expect(Buffer.byteLength(html)).toBeLessThan(60_000)
      expect(gzipSync(html).length).toBeLessThan(20_000)
    }
  })

  it('leaves out the sections that have nothing to say, and says so where a gap matters', () => {
    const html = renderPage('pages/box-page.njk', {
      ...BOX_US,
      hazards: [],
      wiredHere: [],
      batteries: [],
      cautions: []
    })
    expect(idsOf(html)).not.toContain('hazards')
    expect(idsOf(html)).not.toContain('program')
    expect(textOf(html)).toContain('No station is wired here.')
    expect(textOf(html)).toContain('No battery in this box.')
  })
})

describe('lid labels', () => {
  it('carry their code twice and everything a person needs with no phone', () => {
    const html = renderPage('pages/labels.njk', LABELS_METRIC)
    expect(html.match(/class="qr"/gu)).toHaveLength(2 * LABELS_METRIC.labels.length)
    for (const label of LABELS_METRIC.labels) {
      const words = [label.tag, label.box, label.site, label.shutOff, label.battery, label.coil, label.url, label.foot]
      for (const text of words) expect(textOf(html)).toContain(text)
      for (const { waters } of label.stations) expect(textOf(html)).toContain(waters)
    }
  })

  it('put the line of hazard first', () => {
    const html = renderPage('pages/labels.njk', { ...LABELS_METRIC, labels: LABELS_METRIC.labels.slice(0, 1) })
    const label = textOf(html.slice(html.indexOf('<article')))
    expect(label.indexOf('LIVE TRAFFIC')).toBeGreaterThan(-1)
    expect(label.indexOf('LIVE TRAFFIC')).toBeLessThan(label.indexOf('7KQ3F9X'))
  })
})

describe('other pages', () => {
  it('the page for typing lists every tag as a link, for when there is no script', () => {
    const html = renderPage('pages/tag-entry.njk', TAG_ENTRY)
    for (const tag of TAG_ENTRY.tags) expect(html).toContain(`<a href="B/${tag}/index.html">${tag}</a>`)
  })

  it('the site page tells a box without a tag from a box with one', () => {
    const text = textOf(renderPage('pages/site.njk', SITE))
    expect(text).toContain('no tag')
    expect(text).toMatch(/1\s+error\s/u)
  })

  it('fleet and site pages hold with nothing on them', () => {
    const findings = { label: 'All findings', href: 'findings.html' }
    const empty = { language: 'en-US', title: 'Sites', asOf: '', findings, totals: [], sites: [], due: [], foot: '' }
    expect(textOf(renderPage('pages/fleet.njk', empty))).toContain('Nothing is due.')
    const bare = { ...SITE, facts: [], links: [], boxes: [], batteries: [], findings: [] }
    expect(textOf(renderPage('pages/site.njk', bare))).toContain('Nothing found.')
  })

  it('the findings page holds with nothing found', () => {
    expect(textOf(renderPage('pages/findings.njk', { ...FINDINGS, sites: [] }))).toContain('Nothing was found.')
  })
})
