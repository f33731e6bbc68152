import { applicationRate } from '../../domain/water/application-rate.ts'
import type { Site, Station } from '../../model/site.ts'
import { isPlausible, plausibleRate } from '../../reference/plausible.ts'
import { quantity } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { roundedText, show, showStated } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { slips } from './slips.ts'
import { unlikelyAmounts } from './unlikely-amounts.ts'

export const unitUnlikely: SiteCheck = {
  card: {
    code: 'file/unit-unlikely',
    severity: 'warning',
    looksAt:
      'A value far outside what is likely for its kind, or against another figure of the record: square feet as square meters, liters an hour as liters a minute, kiloliters as megaliters on a meter, degrees as percent of slope.',
    why: 'A unit that slipped goes unnoticed into every figure made from it.',
    sources: ['from-memory', 'project-rule'],
    fix: 'Look at the record again. If the unit slipped, correct it; a value that is true may stay.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 2600 m² }
  - { id: K1/2, zone: Z2, devices: { kind: spray, flow: 42 L/min }, area: 240 m² }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 2600 ft² }
  - { id: K1/2, zone: Z2, devices: { kind: spray, flow: 42 L/min }, area: 240 m² }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of site.stations) judgeRate(site, station, report)
    for (const one of unlikelyAmounts(site)) report(one)
    for (const one of slips(site, plan)) report(one)
  }
}

function judgeRate(site: Site, station: Station, report: Report): void {
  const { area, devices } = station
  const flow = flowOf(station)
  if (!area || !devices || !flow) return
  const range = plausibleRate(devices.kind)
  const rate = applicationRate(flow.si, area.si)
  if (isPlausible(rate, range)) return
  const mmPerH = (rateMPerS: number) => rateMPerS * 3_600_000
  const words = (rateMPerS: number) => rateText(rateMPerS, site.units)
  const slip = areaSlip(area, flow.si, range) ?? flowSlip(flow, area.si, range)
  report({
    subject: station.zone,
    at: at(station, 'area'),
    message:
      `${station.zone}: ${showStated(flow)} on ${showStated(area)} is ${words(rate)}; ` +
      `${range.what} give between ${words(range.least)} and ${words(range.most)}.`,
    fix: slip
      ? `If the figure was in ${slip.unit}, write "${slip.key}: ${slip.value} ${slip.unit}", which gives ${words(slip.rate)}.`
      : 'Measure the area and the flow again.',
    values: { rate_mm_per_h: mmPerH(rate), ...(slip ? { rate_if_slipped_mm_per_h: mmPerH(slip.rate) } : {}) }
  })
}

/** A slip often makes a rate small, so that one place would hide it: 0.97 mm/h, not 1. */
function rateText(rateMPerS: number, units: UnitSystem): string {
  const mmPerH = rateMPerS * 3_600_000
  return units === 'metric' && mmPerH < 2 ? `${roundedText(mmPerH, 2)}\u00a0mm/h` : show(rateMPerS, 'rate', units)
}

/** The flow of the devices, or of the valve where theirs is not written. One valve only: parallel valves share the area. */
function flowOf({ devices, valves }: Station): Quantity<'flow'> | undefined {
  if (devices?.flow) return devices.flow
  if (devices?.each && devices.count !== undefined) {
    return quantity(devices.each.value * devices.count, devices.each.unit, 'flow')
  }
  return valves.length === 1 ? valves[0]?.normalFlow : undefined
}

interface Slip {
  readonly key: 'area' | 'flow'
  readonly value: number
  readonly unit: string
  readonly rate: number
}

type Range = ReturnType<typeof plausibleRate>

/** The unit of area that would make the rate likely. */
function areaSlip(area: Quantity<'area'>, flowSi: number, range: Range): Slip | undefined {
  const slips = ['ft²', 'm²'].map<Slip>(unit => ({
    key: 'area',
    value: area.value,
    unit,
    rate: applicationRate(flowSi, quantity(area.value, unit, 'area').si)
  }))
  return slips.find(slip => isPlausible(slip.rate, range))
}

function flowSlip(flow: Quantity<'flow'>, areaSi: number, range: Range): Slip | undefined {
  const slips = ['L/h', 'L/min', 'gpm', 'gph', 'm³/h'].map<Slip>(unit => ({
    key: 'flow',
    value: flow.value,
    unit,
    rate: applicationRate(quantity(flow.value, unit, 'flow').si, areaSi)
  }))
  return slips.find(slip => isPlausible(slip.rate, range))
}
