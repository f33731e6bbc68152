import type { PlaceKind } from './facts.ts'

/** Places that lie in a road whatever else the file says. */
const IN_THE_ROAD: readonly PlaceKind[] = ['roundabout', 'median', 'verge']
/** Places that may or may not lie at a road. */
const MAY_BE_AT_A_ROAD: readonly PlaceKind[] = ['planter', 'slope', 'temporary', 'other']

type Where = { readonly place: PlaceKind; readonly road?: boolean }

export function isRoadside({ place, road }: Where): boolean {
  return road === true || IN_THE_ROAD.includes(place)
}

/** True where a road matters and nobody said whether there is one. */
export function roadNotStated({ place, road }: Where): boolean {
  return road === undefined && MAY_BE_AT_A_ROAD.includes(place)
}
