import { isPresent } from '../../base/absent.ts'
import { atLeast } from '../../domain/within.ts'
import type { Recorded, Site, Station, Valve } from '../../model/site.ts'
import { stationFlowM3s } from '../../plan/station-flow.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { controllersInService, stationName, stationsInService } from '../wire/subject.ts'

export const flowBelowMinimum: SiteCheck = {
  card: {
    code: 'valve/flow-below-minimum',
    severity: 'warning',
    looksAt: 'The flow through a valve, against the least flow on which it closes.',
    why: 'Below that flow there is too little pressure difference to push the diaphragm shut, so the valve may weep or stay open.',
    sources: ['product-sheet', 'common-practice'],
    fix: 'Join zones so that more water flows, or fit a valve that closes on less.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire, minimum-flow: 1.9 L/min }, devices: { kind: drip, each: 2 L/h, count: 22 } }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire, minimum-flow: 1.9 L/min }, devices: { kind: drip, each: 2 L/h, count: 57 } }`
    }
  },
  run: ({ site }, report) => {
    for (const { subject, name, record, valve, flowM3s } of flowsThrough(site)) {
      const { minimumFlow: minimum } = valve
      if (!minimum || flowM3s === undefined || atLeast(flowM3s, minimum.si)) continue
      const unit = site.units === 'us' ? 'gpm' : 'L/min'
      const [flow, least] = [flowM3s, minimum.si].map(si => fromSi(si, unit, 'flow')) as [number, number]
      const [flowText, leastText] = toldApart(flow, least, 2)
      report({
        subject,
        at: at(record, 'minimum-flow'),
        message: `${name}: ${flowText}\u00a0${unit} flows; the valve closes on ${closesOn(showStated(minimum), leastText, unit)} or more.`,
        fix: `It takes ${roundedText(Math.ceil((least - flow) * 100 - 1e-6) / 100, 2)}\u00a0${unit} more: join zones, or fit a valve that closes on less.`,
        values: { [keyOf('flow', site.units)]: flow, [keyOf('minimum', site.units)]: least }
      })
    }
  }
}

interface FlowThrough {
  readonly subject: string
  readonly name: string
  readonly record: Recorded
  readonly valve: Valve
  readonly flowM3s: number | undefined
}

/** Every valve in service with what flows through it; through a master valve, the flow of the smallest station that it feeds. */
function flowsThrough(site: Site): readonly FlowThrough[] {
  const stations = stationsInService(site)
  const own = stations.flatMap(station =>
    station.valves.map(valve => ({
      subject: station.zone,
      name: stationName(station),
      record: valve,
      valve,
      flowM3s: valve.normalFlow?.si ?? flowOf(station)
    }))
  )
  const masters = controllersInService(site).flatMap(({ id, masterValve }) => {
    if (!masterValve) return []
    const flows = stations.filter(one => one.controller === id).flatMap(one => flowOf(one) ?? [])
    const flowM3s = flows.length === 0 ? undefined : Math.min(...flows)
    return [{ subject: `${id}/MV`, name: `Master valve of ${id}`, record: masterValve, valve: masterValve, flowM3s }]
  })
  return [...own, ...masters]
}

/** Of the whole station: through one of several valves no more than that can flow. */
function flowOf(station: Station): number | undefined {
  const flow = stationFlowM3s(station)
  return isPresent(flow) ? flow : undefined
}

/** As the sheet states it, and in the unit of the site where that is another. */
function closesOn(stated: string, converted: string, unit: string): string {
  return stated.endsWith(`\u00a0${unit}`) ? stated : `${stated} (${converted}\u00a0${unit})`
}

const keyOf = (what: string, units: UnitSystem): string => `${what}_${units === 'us' ? 'gpm' : 'l_per_min'}`
