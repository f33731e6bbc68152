import { describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { textOf } from '../../src/binder/block-text.ts'
import { publicContext, revisionOf } from '../../src/binder/context.ts'
import { controllerCharts } from '../../src/binder/controller-charts.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { makeBoxPage } from '../../src/binder/make-box-page.ts'
import { makeLabelSheet } from '../../src/binder/make-labels.ts'
import { recordFigure } from '../../src/binder/plan-figure.ts'
import { checklistsSection } from '../../src/binder/sections/checklists.ts'
import { date, parseMonthDay } from '../../src/units/date.ts'
import type { MonthDay } from '../../src/units/date.ts'

const ON = '2026-05-01'
const contexts = assessFleet('sites', date(ON)).sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
const whole = (name: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${name.replace(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`)}(?![\\p{L}\\p{N}])`, 'u')

describe.each(contexts.map(context => [context.site.id, context] as const))(
  'what %s is handed over with',
  (_, context) => {
    const { site } = context
    const label = makeLabelSheet(publicContext(context))

    it('calls each zone and each box by the name of the site file, on chart, binder, drawing, label and box page', () => {
      const charts = controllerCharts(context)
        .map(chart => JSON.stringify(chart.rows))
        .join('|')
      const sections = new Map(makeBinder(context).sections.map(one => [one.id, one.blocks.map(textOf).join('|')]))
      for (const { zone, valves } of site.stations) {
        expect(charts, zone).toMatch(whole(zone))
        for (const id of ['zones', 'index']) expect(sections.get(id), `${id}: ${zone}`).toMatch(whole(zone))
        for (const { box } of valves) expect(sections.get('boxes'), `box of ${zone}`).toMatch(whole(box ?? ''))
      }
      const drawn = recordFigure(context)
      for (const box of site.boxes) {
        const { id, tag } = box
        if (drawn && context.plan.drawing.marks.some(one => one.what === 'box' && one.of === id))
          expect(
            drawn.marks.map(one => one.label),
            id
          ).toContain(id)
        if (tag === undefined) continue
        expect(
          label.labels.find(one => one.tag === tag && one.box === id),
          id
        ).toBeDefined()
        const page = makeBoxPage({ ...box, tag }, publicContext(context))
        expect(page.box).toBe(id)
        for (const row of page.wiredHere) expect(site.stations.map(one => one.zone)).toContain(row.zone)
      }
    })

    it('bears the data date and the revision on every label', () => {
      for (const { foot } of label.labels) {
        expect(foot).toContain(ON)
        expect(foot).toMatch(whole(revisionOf(context)))
      }
    })
  }
)

describe('a southern season', () => {
  it('begins and ends its lists by its own dates, across the end of the year', () => {
    const [first] = contexts
    if (!first) throw new Error('no site')
    const season = {
      from: parseMonthDay('10-01') as MonthDay,
      to: parseMonthDay('03-31') as MonthDay,
      at: first.site.at
    }
    const { blocks } = checklistsSection({ ...first, site: { ...first.site, season } })
    const heads = blocks.flatMap(block => (block.kind === 'heading' ? [block.text] : []))
    expect(heads[0]).toContain('10-01')
    expect(heads.find(text => text.startsWith('End'))).toContain('03-31')
  })
})
