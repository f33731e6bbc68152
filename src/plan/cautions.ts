import { chooseCautions } from '../domain/safety/cautions.ts'
import type { ChosenCaution } from '../domain/safety/cautions.ts'
import type { CoilFacts, SafetyFacts, SupplyFacts } from '../domain/safety/facts.ts'
import { seasonFacts } from '../domain/safety/season-half.ts'
import { waterOf } from '../domain/safety/water.ts'
import type { Site, Supply } from '../model/site.ts'
import { isNotFitted } from './backflows.ts'
import { showWindow } from '../units/clock.ts'
import { monthOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'

/** The cautions that a site calls for on a day, worst first, each with the fact that called for it. */
export function planCautions(site: Site, on: IsoDate): ChosenCaution[] {
  return chooseCautions(safetyFacts(site, on))
}

/** What the cautions are chosen by. What the file does not state stays undefined. */
export function safetyFacts(site: Site, on: IsoDate): SafetyFacts {
  const { workRules: rules, location, boxes, controllers } = site
  return {
    country: location?.country,
    place: site.place,
    road: rules.road,
    laneClosure: rules.laneClosure && showWindow(rules.laneClosure, site.units),
    trafficControlPlan: rules.trafficControlPlan,
    roofEdgeM: rules.roofEdge?.si,
    parapetM: rules.parapet?.si,
    deepestPitM: deepest(site),
    vault: rules.vault,
    supplies: site.supplies.map(supplyFacts),
    adapter: controllers.some(one => one.power === 'adapter'),
    pump: controllers.some(one => one.pumpStart === true) || site.supplies.some(one => /pump/iu.test(one.kind)),
    coils: coilsOf(site),
    winterizedByAir: site.winter?.method === 'air',
    batteries: batteriesOf(site),
    season: seasonFacts(monthOf(on), location?.latitude),
    boxes: boxes.length,
    boxHazards: [...new Set(boxes.flatMap(box => box.hazards))],
    stations: site.stations.length
  }
}

function deepest(site: Site): number | undefined {
  const depths = (site.workRules.pits ?? []).map(pit => pit.depth.si)
  return depths.length > 0 ? Math.max(...depths) : undefined
}

function supplyFacts({ id, kind, meter, backflow, injection }: Supply): SupplyFacts {
  return {
    id,
    water: waterOf(kind),
    backflow: backflow ? (isNotFitted(backflow) ? 'not fitted' : 'fitted') : 'not stated',
    metered: meter !== undefined,
    injection
  }
}

function coilsOf({ stations, controllers }: Site): readonly CoilFacts[] {
  const valves = [
    ...stations.flatMap(one => one.valves),
    ...controllers.flatMap(one => (one.masterValve ? [one.masterValve] : []))
  ]
  return [...new Set(valves.map(valve => valve.coil ?? 'not known'))]
}

/** Kinds of battery as written; the product sheet's where the controller's own is not stated. */
function batteriesOf({ controllers }: Site): readonly string[] {
  const kinds = controllers
    .filter(one => one.power !== 'adapter' || one.battery !== undefined)
    .map(one => one.battery?.kind ?? one.sheet?.battery?.kind ?? 'batteries of a kind not stated')
  return [...new Set(kinds)]
}
