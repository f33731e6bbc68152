import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { applicationRate } from '../domain/water/application-rate.ts'
import { longestCycleS } from '../domain/water/cycle-soak.ts'
import { soilIntake, soilWater, soilWaterMost, slopeOf } from '../domain/water/soil-lookup.ts'
import { allowableM, availableWaterM, longestRunS } from '../domain/water/soil-reservoir.ts'
import type { Station } from '../model/site.ts'
import { ALLOWABLE_DEPLETION } from '../reference/soil.ts'
import type { IntakePlan, ReservoirPlan } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { measuredRateMPerS } from './water-delivery.ts'

/** What cans have caught, else flow over area, m/s. */
export function stationRateMPerS(station: Station): Maybe<number> {
  const caught = measuredRateMPerS(station)
  if (caught !== undefined) return caught
  const flow = stationFlowM3s(station)
  if (isAbsent(flow)) return flow
  if (!station.area) return absent('no area is stated')
  if (!(flow > 0 && station.area.si > 0)) return absent('flow and area must be more than zero')
  return applicationRate(flow, station.area.si)
}

/** Drippers wet points and bubblers fill basins: what runs off there is not told by flow over area. */
const WETS_AN_AREA = /spray|sprinkler|rotor|rotary|impact|mist/iu
const WETS_POINTS = /drip|emitter|bubbler|flood/iu

/** True for sprays, rotors and the like, which are judged by how fast the soil takes water in. */
export function wetsAnArea(station: Station): boolean {
  const kind = station.devices?.kind ?? ''
  return WETS_AN_AREA.test(kind) && !WETS_POINTS.test(kind)
}

/** How fast the ground takes water in, and the longest cycle by that; a figure of the record goes before the table's. */
export function intakeOf(station: Station, rateMPerS: Maybe<number>): Maybe<IntakePlan> {
  if (!wetsAnArea(station)) return absent('it is not a spray, a rotor or the like')
  const ground = groundOf(station)
  if (isAbsent(ground)) return ground
  const { intakeMPerS, surfaceM } = ground
  if (!(intakeMPerS > 0 && surfaceM >= 0)) return absent('the intake of the soil must be more than zero')
  const longestS = isAbsent(rateMPerS) ? rateMPerS : longestCycleS(rateMPerS, intakeMPerS, surfaceM)
  return { ...ground, longestS }
}

function groundOf({ soil, slope: slopeText }: Station): Maybe<Omit<IntakePlan, 'longestS'>> {
  const [intake, surface] = [soil?.intake?.si, soil?.surfaceStorage?.si]
  if (intake !== undefined && surface !== undefined) return { intakeMPerS: intake, surfaceM: surface, by: 'record' }
  if (soil?.texture === undefined || slopeText === undefined) return absent('soil texture or slope is not stated')
  const slope = slopeOf(slopeText)
  if (isAbsent(slope)) return slope
  const table = soilIntake(soil.texture, slope)
  if (isAbsent(table)) return table
  return { intakeMPerS: intake ?? table.intakeMPerS, surfaceM: surface ?? table.surfaceM, by: 'texture' }
}

/** Available water times what may be used of it; half where no other share is stated. */
export function reservoirOf({ soil }: Station, rateMPerS: Maybe<number>): Maybe<ReservoirPlan> {
  const share = soil?.allowableDepletion?.si ?? ALLOWABLE_DEPLETION
  const available = availableOf(soil)
  if (isAbsent(available)) return available
  const [holdsM, atMostM] = [allowableM(available.leastM, share), allowableM(available.mostM, share)]
  if (!(holdsM > 0 && share <= 1)) return absent('what may be used must be more than zero and at most all')
  const longestS = isAbsent(rateMPerS) ? rateMPerS : longestRunS(holdsM, rateMPerS)
  return { holdsM, atMostM, by: available.by, longestS }
}

interface Available {
  readonly leastM: number
  readonly mostM: number
  readonly by: ReservoirPlan['by']
}

function availableOf(soil: Station['soil']): Maybe<Available> {
  const stated = soil?.availableWater?.si
  if (stated !== undefined) return { leastM: stated, mostM: stated, by: 'record' }
  const depthM = soil?.rootDepth?.si
  if (soil?.texture === undefined || depthM === undefined)
    return absent('neither available water nor texture and root depth are stated')
  const [least, most] = [soilWater(soil.texture), soilWaterMost(soil.texture)]
  if (isAbsent(least)) return least
  if (isAbsent(most)) return most
  return { leastM: availableWaterM(least, depthM), mostM: availableWaterM(most, depthM), by: 'texture' }
}
