import type { Controller, Site, Station } from '../model/site.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { WirePlan, Working } from './plan.ts'
import type { WireFacts } from './wire-facts.ts'
import { planWire } from './wire-plan.ts'

export interface WiresPlanned {
  /** By station id; a master valve stands under its controller's id and "/MV". */
  readonly wires: Map<string, WirePlan>
  readonly workings: readonly Working[]
}

/** Every pair of wires of a site: its stations', and its master valves' where they have a wire of their own. */
export function planWires(site: Site): WiresPlanned {
  const planned = [...site.stations.map(station => stationFacts(site, station)), ...masterFacts(site)].map(planWire)
  return {
    wires: new Map(planned.map(({ plan }) => [plan.station, plan])),
    workings: planned.flatMap(({ workings }) => workings)
  }
}

/** Both readings of a run whose sizes are a bare "mm": all of them taken as diameters, and all as areas. */
export function bothReadingsOf(
  site: Site,
  {
    id,
    controller,
    valves,
    wire,
    splices = []
  }: Pick<Station, 'id' | 'controller' | 'valves' | 'wire'> & Partial<Pick<Station, 'splices'>>
): { readonly asDiameter: WirePlan; readonly asArea: WirePlan } {
  const sheet = site.controllers.find(one => one.id === controller)?.sheet
  const facts = { id, valves, wire, splices, ...(sheet ? { sheet } : {}) }
  return {
    asDiameter: planWire(readAs(facts, 'diameter')).plan,
    asArea: planWire(readAs(facts, 'area')).plan
  }
}

export const masterValveId = (controller: Controller): string => `${controller.id}/MV`

function stationFacts(site: Site, { id, controller, valves, wire, splices }: Station): WireFacts {
  const sheet = site.controllers.find(one => one.id === controller)?.sheet
  return { id, valves, wire, splices, ...(sheet ? { sheet } : {}) }
}

function masterFacts(site: Site): readonly WireFacts[] {
  return site.controllers.flatMap(controller => {
    const { masterValve, sheet } = controller
    if (!masterValve || masterValve.wire.length === 0) return []
    return [
      {
        id: masterValveId(controller),
        valves: [masterValve],
        wire: masterValve.wire,
        splices: [],
        ...(sheet ? { sheet } : {})
      }
    ]
  })
}

function readAs(facts: WireFacts, reading: 'diameter' | 'area'): WireFacts {
  const sized = (size: WireSize): WireSize => {
    if (size.kind !== 'ambiguous') return size
    return reading === 'area' ? { kind: 'area', mm2: size.mm } : { kind: 'diameter', mm: size.mm }
  }
  const wire = facts.wire.map(segment => ({
    ...segment,
    size: sized(segment.size),
    ...(segment.common ? { common: sized(segment.common) } : {})
  }))
  return { ...facts, wire }
}
