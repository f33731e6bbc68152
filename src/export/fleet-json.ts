import { isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { PageContext } from '../binder/context.ts'
import type { IsoDate } from '../units/date.ts'

type Amount = { readonly value: number; readonly unit: string } | null

const amount = (value: Maybe<number> | undefined, unit: string): Amount =>
  value !== undefined && isPresent(value) ? { value: Number(value.toPrecision(6)), unit } : null

/** The fleet for other programs: ids, places and the figures of the plan. Nothing private is in it. */
export function fleetJson(contexts: readonly PageContext[], on: IsoDate): object {
  return fleetOf(contexts.map(siteJson), on)
}

/** The same from sites made before. */
export function fleetOf(sites: readonly object[], on: IsoDate): object {
  return { schema: 1, on, sites }
}

export function siteJson({ site, plan }: Pick<PageContext, 'site' | 'plan'>): object {
  return {
    id: site.id,
    title: site.title,
    place: site.place,
    status: site.status,
    revision: site.revision ?? null,
    boxes: site.boxes.map(box => ({ id: box.id, tag: box.tag ?? null, where: box.where ?? null, ties: box.ties })),
    controllers: site.controllers.map(controller => {
      const battery = plan.batteries.get(controller.id)
      return {
        id: controller.id,
        box: controller.box ?? null,
        battery: battery
          ? {
              kind: battery.kind,
              count: battery.count,
              fitted: battery.fitted ?? null,
              due_on: isPresent(battery.dueOn) ? battery.dueOn : null,
              state: battery.state
            }
          : null
      }
    }),
    stations: site.stations.map(station => {
      const wire = plan.wires.get(station.id)
      return {
        id: station.id,
        zone: station.zone,
        waters: station.waters ?? null,
        wire: wire
          ? {
              length: amount(wire.lengthM, 'm'),
              loop: amount(wire.loopOhm, 'ohm'),
              coil_voltage: amount(wire.coilVolt, 'V'),
              longest: amount(wire.longestM, 'm'),
              passes: wire.limits.length === 0 ? null : wire.limits.every(limit => limit.passes)
            }
          : null
      }
    })
  }
}
