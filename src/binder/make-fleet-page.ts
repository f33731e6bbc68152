import type { FleetPage } from './pages.ts'
import type { Value } from './blocks.ts'
import { stated } from './values.ts'
import { siteState } from './site-state.ts'
import type { SiteSummary } from './site-summary.ts'
import type { DueItem } from './due-items.ts'
import { sum } from '../base/collections.ts'
import { countFindings } from '../diagnostics/finding.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { IsoDate } from '../units/date.ts'
import type { Words } from '../words/words.ts'

export interface FleetInput {
  readonly built: readonly SiteSummary[]
  /** Sites whose files could not be understood, with what is wrong. */
  readonly left: readonly { readonly id: string; readonly findings: readonly Finding[] }[]
  readonly on: IsoDate
  readonly words: Words
  readonly version: string
}

/** All sites at a glance; links are relative to office/. */
export function makeFleetPage({ built, left, on, words, version }: FleetInput): FleetPage {
  const w = words.office
  const due = built.flatMap(one => one.due)
  const all = [...built.flatMap(one => one.findings), ...left.flatMap(one => one.findings)]
  const counts = countFindings(all)
  const total = (label: string, value: number) => ({ label, value: String(value) })
  return {
    language: words.language,
    title: w.fleetTitle,
    asOf: w.asOf(on),
    findings: { label: w.allFindings, href: 'findings.html' },
    route: { label: words.due.route.link, href: 'route.html' },
    map: { label: words.fleet.mapLink, href: 'map.html' },
    water: { label: words.fleet.waterLink, href: 'water.html' },
    filters: filtersOf(built, words),
    totals: [
      total(w.sites, built.length + left.length),
      total(w.boxes, sum(built.map(one => one.counts.boxes))),
      total(w.controllers, sum(built.map(one => one.counts.controllers))),
      total(w.stations, sum(built.map(one => one.counts.stations))),
      total(w.overdue, due.filter(one => one.kind === 'battery' && one.state === 'overdue').length),
      total(w.due60, due.filter(one => one.kind === 'battery' && one.state === 'due-soon').length),
      total(w.errors, counts.error),
      total(w.warnings, counts.warning)
    ],
    sites: [
      ...built.map(site => ({
        id: site.id,
        title: site.title,
        href: `${site.id}/index.html`,
        place: site.place,
        boxes: site.counts.boxes,
        stations: site.counts.stations,
        nextDue: nextDue(site.due, words),
        counts: countFindings(site.findings),
        marks: marksOf(site)
      })),
      ...left.map(({ id, findings }) => ({
        id,
        title: id,
        href: `findings.html#${id}`,
        place: '–',
        boxes: 0,
        stations: 0,
        nextDue: stated('–'),
        counts: countFindings(findings),
        marks: { place: '', status: '', findings: 'error', due: '' },
        problem: w.notBuilt(countFindings(findings).error)
      }))
    ],
    due: sortedDue(due).map(item => ({
      date: dateValue(item, words),
      site: item.siteTitle,
      // What is due at a site as a whole is told by the name of its folder, which says nothing here.
      subject: item.subject === item.site ? '–' : item.subject,
      what: item.what,
      href: `${item.site}/index.html`
    })),
    foot: w.foot(version, on)
  }
}

/** By what each row can be found: the values of the filters. */
function marksOf({ place, status, findings, due }: SiteSummary): Readonly<Record<string, string>> {
  const { error, warning } = countFindings(findings)
  const states = { bad: 'overdue', unknown: 'no-date', soon: 'due-soon', good: 'ok' } as const
  return {
    place,
    status,
    findings: error > 0 ? 'error' : warning > 0 ? 'warning' : 'none',
    due: states[siteState(due)]
  }
}

function filtersOf(built: readonly SiteSummary[], words: Words): FleetPage['filters'] {
  const w = words.fleet
  const marks = built.map(marksOf)
  const filter = (key: string, label: string, labels: Readonly<Record<string, string>>) => ({
    key,
    label,
    choices: [...new Set(marks.map(one => one[key] ?? ''))]
      .filter(value => value !== '')
      .sort()
      .map(value => ({ value, label: labels[value] ?? value }))
  })
  return [
    filter('place', w.place, {}),
    filter('status', w.status, w.statuses),
    filter('findings', w.findings, w.findingKinds),
    filter('due', w.due, w.dueKinds)
  ].filter(one => one.choices.length > 1)
}

/** No date first, then by date: an unknown date is never at the bottom of a list. */
export function sortedDue(items: readonly DueItem[]): DueItem[] {
  return [...items].sort((a, b) => ((a.dueOn ?? '') < (b.dueOn ?? '') ? -1 : (a.dueOn ?? '') > (b.dueOn ?? '') ? 1 : 0))
}

function nextDue(items: readonly DueItem[], words: Words): Value {
  const [first] = sortedDue(items)
  return first ? dateValue(first, words) : stated(words.office.nothingDue)
}

function dateValue({ dueOn, state }: DueItem, words: Words): Value {
  const shape = { overdue: 'bad', 'due-soon': 'soon', 'no-date': 'unknown', ok: 'good' } as const
  const word = words.binder.batteries.states[state]
  return {
    text: [dueOn, state === 'ok' ? '' : word].filter(Boolean).join(' '),
    standing: 'computed',
    mono: true,
    state: shape[state]
  }
}
