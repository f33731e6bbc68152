import { absent, isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { soakS } from '../domain/water/cycle-soak.ts'
import type { LongestCycle } from '../domain/water/cycle-soak.ts'
import { LEAST_SOAK_S } from '../domain/water/advise.ts'
import type { Station } from '../model/site.ts'
import { isPlausible, plausibleRate } from '../reference/plausible.ts'
import type { WaterPlan } from './plan.ts'
import { stationDelivery } from './water-delivery.ts'

/** What a zone asks of its program. */
export interface ZoneNeed {
  readonly station: Station
  /** Depth to put on month by month, losses made good; 0 where nothing is needed or known. */
  readonly applyM: readonly number[]
  /** What the plants take from the ground, before losses. */
  readonly needM: readonly number[]
  readonly rateMPerS: number
  /** How its losses are told, as the card of the calculation takes them. */
  readonly losses: { readonly efficiency?: number; readonly dulq?: number }
  readonly longestCycle: LongestCycle
  readonly soakS: number
  /** What the root zone takes up at one watering: surely, and at the most that its texture may hold. */
  readonly holds?: { readonly sureM: number; readonly mostM: number }
}

/** Depth to put on month by month, losses made good; absent where it is not known for a month in which the station waters. */
export function applyMonths(station: Station, { months }: WaterPlan): Maybe<readonly number[]> {
  const delivery = stationDelivery(station)
  if (isAbsent(delivery)) return delivery
  const unknown = months.find(one => one.events > 0 && isAbsent(one.needM))
  if (unknown && isAbsent(unknown.needM)) return unknown.needM
  const known = months.map(({ needM }) => (isPresent(needM) ? needM * delivery.multiplier : 0))
  return known.some(depth => depth > 0) ? known : absent('nothing is needed in the months in which it waters')
}

/**
 * Absent, with the reason, for zones that are not judged: bubblers, since the basin that they fill is not the ground that the tree uses, and
 * rates that point to a slip of a unit, which has a finding of its own.
 */
export function zoneNeed(station: Station, water: WaterPlan): Maybe<ZoneNeed> {
  const { rateMPerS, intake, reservoir, months } = water
  if (isAbsent(rateMPerS)) return rateMPerS
  const kind = station.devices?.kind ?? ''
  if (/bubbler|flood/iu.test(kind)) return absent('a bubbler fills a basin, which is not the ground that the roots use')
  if (!isPlausible(rateMPerS, plausibleRate(kind))) return absent('its application rate is not likely: see open items')
  const applyM = applyMonths(station, water)
  if (isAbsent(applyM)) return applyM
  const ground = isAbsent(intake) || isAbsent(intake.longestS) ? undefined : { ...intake, longestS: intake.longestS }
  return {
    station,
    applyM,
    needM: months.map(({ needM }) => (isPresent(needM) ? needM : 0)),
    rateMPerS,
    losses: lossesOf(station),
    longestCycle: ground?.longestS ?? 'no limit',
    soakS: ground ? Math.max(LEAST_SOAK_S, soakS(ground.surfaceM, ground.intakeMPerS)) : LEAST_SOAK_S,
    ...(isAbsent(reservoir) ? {} : { holds: { sureM: reservoir.holdsM, mostM: reservoir.atMostM } })
  }
}

function lossesOf(station: Station): ZoneNeed['losses'] {
  const plan = stationDelivery(station)
  if (isAbsent(plan) || plan.delivery.by === 'nothing') return {}
  const { by, share } = plan.delivery
  return { [by]: share }
}
