import { sortedBy } from '../base/collections.ts'
import type { Controller, Site, VisitBattery } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'

/** The set of cells that is in a controller now. */
export interface FittedSet {
  readonly kind: string
  readonly count: number
  readonly fitted?: IsoDate
  readonly dateCode?: IsoDate
}

/**
 * The latest of the site file's own date and the changes recorded by visits up to `on`. A date code belongs to the set it stands with, so a
 * later change leaves it behind.
 */
export function fittedSet(site: Site, controller: Controller, on: IsoDate): FittedSet {
  const { battery, sheet } = controller
  const kind = battery?.kind ?? sheet?.battery?.kind ?? 'not stated'
  const count = battery?.count ?? sheet?.battery?.count ?? 1
  const own: FittedSet = {
    kind,
    count,
    ...(battery?.fitted ? { fitted: battery.fitted } : {}),
    ...(battery?.dateCode ? { dateCode: battery.dateCode } : {})
  }
  const change = lastChange(site, controller.id, on)
  if (!change?.fitted || (own.fitted !== undefined && own.fitted >= change.fitted)) return own
  return { kind: change.kind ?? kind, count: change.count ?? count, fitted: change.fitted }
}

function lastChange(site: Site, controller: string, on: IsoDate): VisitBattery | undefined {
  const changes = site.visits
    .filter(visit => visit.on <= on)
    .flatMap(visit => visit.batteries)
    .filter(battery => battery.controller === controller && battery.fitted !== undefined && battery.fitted <= on)
  return sortedBy(changes, battery => battery.fitted ?? '').at(-1)
}

/** Why there is no battery to change; undefined where there is one. */
export function idleReason(site: Site, controller: Controller, set: FittedSet): string | undefined {
  const { outOfService, battery, power } = controller
  if (outOfService !== undefined) return `out of service: ${outOfService}`
  if (site.status === 'out-of-service' || site.status === 'removed')
    return `the site is ${site.status.replaceAll('-', ' ')}`
  if (battery) return undefined
  if (power === 'solar') return 'no battery is recorded; it runs from a solar panel'
  if (power === 'adapter') return 'no battery is recorded; it runs from an adapter'
  return site.status === 'planned' && set.fitted === undefined ? 'the site is planned' : undefined
}
