import { regionOf } from '../../domain/safety/region.ts'
import type { Site } from '../../model/site.ts'

/** Ends a fix that rests on a rule of the United States: who decides, and outside the US that the rule is an example. */
export function usRule(site: Site, decides: string): string {
  return regionOf(site.location?.country) === 'US'
    ? ` ${decides}`
    : ` This rests on a US rule, as an example: check the local equivalent. ${decides}`
}
