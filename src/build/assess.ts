import type { Finding } from '../diagnostics/finding.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import { CHECKS } from '../checks/list.ts'
import { runChecks, wordFault } from '../checks/run.ts'
import { withoutPrivate } from '../checks/without-private.ts'
import { roughPrivateWords } from '../load/rough-private.ts'
import type { LoadedSite } from '../load/loaded.ts'
import type { Fleet } from '../model/fleet.ts'
import type { Site } from '../model/site.ts'
import { makePlan } from '../plan/make-plan.ts'
import type { Plan } from '../plan/plan.ts'
import type { IsoDate } from '../units/date.ts'
import { Refusal } from '../base/refusal.ts'
import { loadOne } from './load-one.ts'
import { readFleet } from './read-fleet.ts'
import type { FleetSources, SiteSources } from './read-fleet.ts'
import { attachmentFaults } from './attachments.ts'
import { photoFaults } from './photos.ts'
import { readRegister } from './read-register.ts'
import { unreadTextFaults } from './unread-texts.ts'

/** One site as read, planned and checked. Without a plan its files could not be understood; the findings say why. */
export interface AssessedSite {
  readonly id: string
  readonly sources: SiteSources
  readonly loaded: LoadedSite
  readonly site?: Site
  readonly plan?: Plan
  readonly findings: readonly Finding[]
}

export interface Assessment {
  readonly on: IsoDate
  readonly sources: FleetSources
  readonly fleet: Fleet
  readonly sites: readonly AssessedSite[]
  /** Findings of the register and of files that are no text. */
  readonly general: readonly Finding[]
}

/** Reads, plans and checks a folder of sites. `only` names the sites that are asked for; the others are still read, since tags are the fleet's. */
export function assessFleet(folder: string, on: IsoDate, only: readonly string[] = []): Assessment {
  const sources = readFleet(folder)
  refuseUnknownSites(sources, only)
  const loaded = sources.sites.map(one => loadOne(one, sources))
  const { tags, general } = readRegister(sources, only)
  const fleet: Fleet = {
    sites: loaded.flatMap(one => (one.site ? [one.site] : [])),
    register: tags,
    registerGone: tags.length === 0
  }
  const sites = sources.sites.flatMap<AssessedSite>((one, index) => {
    const load = loaded[index]
    if (!load || (only.length > 0 && !only.includes(one.id))) return []
    return [assessOne(one, load, fleet, on)]
  })
  return { on, sources, fleet, sites, general }
}

/** Every finding of an assessment in the one order. */
export function allFindings({ general, sites }: Assessment): Finding[] {
  return sortFindings([...general, ...sites.flatMap(one => one.findings)])
}

/** A loaded site planned and checked, within the fleet whose tags it must not share. */
export function assessOne(sources: SiteSources, loaded: LoadedSite, fleet: Fleet, on: IsoDate): AssessedSite {
  const plan = loaded.site ? makePlan(loaded.site, on) : undefined
  const findings = runChecks({ loaded, fleet, ...(plan ? { plan } : {}) }, CHECKS)
  const files = loaded.site
    ? [
        ...photoFaults(loaded, loaded.site, sources),
        ...attachmentFaults(loaded, loaded.site, sources),
        ...unreadTextFaults(sources)
      ]
    : unreadTextFaults(sources)
  return {
    id: sources.id,
    sources,
    loaded,
    ...(loaded.site ? { site: loaded.site } : {}),
    ...(plan ? { plan } : {}),
    findings: sortFindings(
      withoutPrivate(
        [...findings, ...files.map(fault => wordFault(loaded.id, fault, CHECKS))],
        loaded.site?.privateWords ?? roughWords(sources)
      )
    )
  }
}

/** Of a site that could not be understood. */
function roughWords({ site, visits }: SiteSources): { readonly text: string }[] {
  return [...(site ? [site] : []), ...visits].flatMap(roughPrivateWords).map(text => ({ text }))
}

/** Names of sites that are not there are a slip of the call. */
export function refuseUnknownSites(sources: FleetSources, only: readonly string[]): void {
  const there = sources.sites.map(one => one.id)
  const unknown = only.filter(id => !there.includes(id))
  if (unknown.length === 0) return
  throw new Refusal(
    `There is no site ${unknown.join(', ')} in ${sources.folder}.`,
    `Sites there: ${there.join(', ') || 'none'}`
  )
}
