import type { FindingsPage } from './pages.ts'
import { findingGroups } from './finding-groups.ts'
import { totalCounts } from './fleet-counts.ts'
import type { FleetInput } from './make-fleet-page.ts'
import { groupBy, sortedBy } from '../base/collections.ts'
import { countFindings } from '../diagnostics/finding.ts'
import type { Finding } from '../diagnostics/finding.ts'

/** Every finding of the fleet, by site; links are relative to office/. Findings of no site come first. */
export function makeFindingsPage(input: FleetInput, general: readonly Finding[]): FindingsPage {
  const { built, left, on, words, version } = input
  const w = words.office
  const site = (id: string, title: string, findings: readonly Finding[], href?: string) => ({
    id,
    title,
    ...(href ? { href } : {}),
    counts: countFindings(findings),
    groups: findingGroups(findings, words)
  })
  return {
    language: words.language,
    title: w.findingsTitle,
    asOf: w.asOf(on),
    lookedAt: w.lookedAt(totalCounts(built.map(one => one.counts)), left.length),
    fleet: { label: w.fleetTitle, href: 'index.html' },
    kinds: kindsOf([...general, ...left.flatMap(one => one.findings), ...built.flatMap(one => one.findings)]),
    sites: [
      ...(general.length > 0 ? [site('fleet', w.general, general)] : []),
      ...left.map(one => site(one.id, one.id, one.findings)),
      ...built
        .filter(one => one.findings.length > 0)
        .map(one => site(one.id, one.title, one.findings, `${one.id}/index.html`))
    ],
    empty: w.noFindings,
    foot: w.foot(version, on)
  }
}

function kindsOf(findings: readonly Finding[]): FindingsPage['kinds'] {
  const kinds = [...groupBy(findings, one => `${one.code} ${one.severity}`).values()].flatMap(group => {
    const [first] = group
    if (!first) return []
    const { code, severity } = first
    return [{ code, severity, count: group.length, sites: new Set(group.map(one => one.site)).size }]
  })
  return sortedBy(
    kinds,
    one => -one.count,
    one => one.code
  )
}
