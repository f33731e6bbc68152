import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { ruleRows } from '../rule-rows.ts'
import { orNotSupplied, stated, statedQuantity } from '../values.ts'
import { MONTHS } from '../../units/date.ts'
import { showWindow } from '../../units/clock.ts'
import type { Site } from '../../model/site.ts'
import type { Words } from '../../words/words.ts'

export function siteSection({ site, words }: PageContext): Section {
  const w = words.binder.site
  const u = words.units
  const blocks: Block[] = [
    { kind: 'facts', caption: w.facts, rows: [...placeRows(site, words), ...rulesRows(site, words)] }
  ]
  const climate = referenceEtTable(site, words)
  if (climate) blocks.push(climate)
  if (site.sensors.length > 0) {
    blocks.push({
      kind: 'table',
      caption: w.sensors,
      columns: [w.sensor, w.kind, w.where, u.wiredHead, u.contact, u.bypass, w.notes].map(label => ({ label })),
      rows: site.sensors.map(one => [
        stated(one.id),
        stated(one.kind),
        stated([one.controller, one.box].filter(Boolean).join(', ') || '–'),
        orNotSupplied(one.wired && u.wired[one.wired], words),
        orNotSupplied(one.normally && u.normally[one.normally], words),
        orNotSupplied(one.bypass, words),
        stated(one.note ?? '–')
      ])
    })
  }
  for (const [index, section] of site.prose.entries()) {
    if (section.heading) blocks.push({ kind: 'heading', id: `note-${index + 1}`, text: section.heading })
    blocks.push({ kind: 'prose', markdown: section.markdown })
  }
  return { id: 'site', title: words.binder.sections.site, newPage: true, blocks }
}

/** As it was supplied, in the unit it was supplied in. */
function referenceEtTable(site: Site, words: Words): Block | undefined {
  const byMonth = site.climate?.referenceEt
  if (!byMonth) return undefined
  return {
    kind: 'table',
    caption: words.binder.site.referenceEt,
    columns: words.time.months.map(label => ({ label, align: 'right' })),
    rows: [MONTHS.map(month => statedQuantity(byMonth[month], words))]
  }
}

type Row = { label: string; value: Value }

function placeRows(site: Site, words: Words): Row[] {
  const w = words.binder.site
  const { location } = site
  const coordinates =
    location?.latitude === undefined || location.longitude === undefined
      ? undefined
      : `${location.latitude}, ${location.longitude}`
  return [
    { label: words.binder.cover.place, value: stated(words.binder.places[site.place]) },
    { label: words.binder.cover.address, value: orNotSupplied(location?.address, words) },
    { label: w.coordinates, value: orNotSupplied(coordinates, words, true) },
    { label: w.elevation, value: statedQuantity(location?.elevation, words) },
    { label: w.timeZone, value: orNotSupplied(location?.timeZone, words) },
    {
      label: words.binder.cover.season,
      value: stated(site.season ? words.binder.season(site.season.from, site.season.to) : words.binder.allYear)
    }
  ]
}

function rulesRows(site: Site, words: Words): Row[] {
  const w = words.binder.site
  const rows: Row[] = site.wateringRules.flatMap(rule => ruleRows(rule, site, words))
  if (rows.length === 0) rows.push({ label: w.rule, value: orNotSupplied(undefined, words) })
  const { laneClosure, trafficControlPlan, road, note } = site.workRules
  if (laneClosure) rows.push({ label: w.laneClosure, value: stated(showWindow(laneClosure, site.units)) })
  if (note) rows.push({ label: w.workNote, value: stated(note) })
  if (road || laneClosure) rows.push({ label: w.plan, value: orNotSupplied(trafficControlPlan, words) })
  return rows
}
