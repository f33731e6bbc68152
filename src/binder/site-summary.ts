import type { PageContext } from './context.ts'
import { dueItems } from './due-items.ts'
import type { DueItem } from './due-items.ts'
import { fleetCounts } from './fleet-counts.ts'
import type { FleetCounts } from './fleet-counts.ts'
import { searchText } from './search-text.ts'
import { isPresent } from '../base/absent.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { LatLon } from '../domain/distance.ts'
import { openJobs } from '../plan/open-jobs.ts'
import { showWindow } from '../units/clock.ts'
import type { UnitSystem } from '../units/show.ts'
import type { Words } from '../words/words.ts'

/** What a route sheet needs to know of a site beside what is due there. */
export interface SiteStop {
  /** What stands behind the last comma of the address, as a rule the town. */
  readonly town?: string
  readonly stations: number
  readonly winterByAir: boolean
  readonly access: readonly string[]
  readonly open: readonly string[]
}

/**
 * What the pages of the whole fleet tell of one site, as plain data without maps or functions: it is kept from one build to the next, so that a
 * site that did not change is not read again. Nothing private is in it.
 */
export interface SiteSummary {
  readonly id: string
  readonly title: string
  readonly place: string
  readonly counts: Omit<FleetCounts, 'sites'>
  readonly findings: readonly Finding[]
  readonly due: readonly DueItem[]
  readonly at?: LatLon
  readonly stop: SiteStop
  readonly status: string
  readonly water: {
    readonly units: UnitSystem
    /** Of a year; undefined where no budget is stated. */
    readonly allowanceM3?: number
    readonly programmedM3: number
    /** Stations that water and are not in the figure. */
    readonly flowNotStated: number
  }
  /** Words by which the site is found. */
  readonly search: string
}

export function siteSummary(context: PageContext, words: Words): SiteSummary {
  const { site, findings } = context
  const { boxes, controllers, stations } = fleetCounts([site])
  const { latitude, longitude } = site.location ?? {}
  return {
    id: site.id,
    title: site.title,
    place: words.binder.places[site.place],
    counts: { boxes, controllers, stations },
    findings,
    // In the words of the office, whatever the language of the site.
    due: dueItems({ ...context, words }),
    ...(latitude === undefined || longitude === undefined ? {} : { at: { latitude, longitude } }),
    stop: stopOf(context, words),
    status: site.status,
    water: waterOf(context),
    search: searchText(site, findings)
  }
}

function waterOf({ site, plan: { budget } }: PageContext): SiteSummary['water'] {
  const { allowanceM3, programmedM3, flowNotStated } = budget
  return {
    units: site.units,
    ...(isPresent(allowanceM3) ? { allowanceM3 } : {}),
    programmedM3,
    flowNotStated: flowNotStated.length
  }
}

function stopOf({ site, plan }: PageContext, words: Words): SiteStop {
  const w = words.due.route
  const town = site.location?.address?.split(',').at(-1)?.trim()
  return {
    ...(town === undefined ? {} : { town }),
    stations: site.stations.length,
    winterByAir: site.winter?.method === 'air',
    access: accessOf(site, words),
    open: openJobs(site, plan.on).map(job => w.openJob(job.text, job.since, job.owner ?? ''))
  }
}

function accessOf(site: PageContext['site'], words: Words): string[] {
  const w = words.due.route
  const { road, laneClosure, trafficControlPlan, note } = site.workRules
  return [
    ...(site.location?.address === undefined ? [] : [site.location.address]),
    ...(road === true ? [w.road] : []),
    ...(laneClosure ? [w.lane(showWindow(laneClosure, site.units))] : []),
    ...(trafficControlPlan === undefined ? [] : [w.traffic(trafficControlPlan)]),
    ...site.wateringRules.flatMap(rule => rule.windows.map(one => w.watering(showWindow(one, site.units)))),
    ...(note === undefined ? [] : [note])
  ]
}
