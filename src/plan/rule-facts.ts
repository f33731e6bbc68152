import type { RuleFacts } from '../domain/schedule/rules.ts'
import type { Site, WateringRule } from '../model/site.ts'

/** What of a site its watering rules may ask for. */
export function ruleFacts({ location }: Site): RuleFacts {
  return { houseNumber: location?.houseNumber, timeZone: location?.timeZone }
}

/** Whether a rule concerns a station of a controller: not where it leaves the kind of its devices free. */
export function bindsStation(rule: WateringRule, site: Site, controller: string): (station: number) => boolean {
  const free = rule.except
  if (!free || free.length === 0) return () => true
  const exempt = new Set(
    site.stations.flatMap(one =>
      one.controller === controller && isFree(free, one.devices?.kind ?? '') ? [one.number] : []
    )
  )
  return station => !exempt.has(station)
}

/** "drip" leaves "inline drip" free as well. */
function isFree(kinds: readonly string[], kind: string): boolean {
  return kinds.some(one => kind.toLowerCase().includes(one.toLowerCase()))
}
