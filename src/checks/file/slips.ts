import { isAbsent, isPresent } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { slopeOf } from '../../domain/water/soil-lookup.ts'
import type { Site, Station } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import { FLOW_UNITS, MOST_SLOPE } from '../../reference/plausible.ts'
import { quantity } from '../../units/quantity.ts'
import { roundedText, show, showStated } from '../../units/show.ts'
import type { Reported } from '../check.ts'
import { at } from '../at.ts'

/** Within this share two figures are the same but for their rounding. */
const SAME = 0.1

/** Units that slipped, told by another figure of the record: kL and ML, L/h and L/min, m² and ft², percent and degrees. */
export function slips(site: Site, plan: Plan): Reported[] {
  return [
    ...meterSlips(site, plan),
    ...site.stations.flatMap(flowSlip),
    ...areaSlip(site),
    ...site.stations.flatMap(slopeSlip)
  ]
}

/** A meter that runs backward, or some twenty times off what was programmed. */
function meterSlips(site: Site, { budget }: Plan): Reported[] {
  return budget.periods.flatMap(({ supply, from, to, reading, meteredM3, programmedM3, slip }) => {
    if (!slip && isPresent(meteredM3)) return []
    const counted = isAbsent(meteredM3)
      ? `the meter reads less on ${to} than on ${from}`
      : `from ${from} to ${to} the meter counted ${show(meteredM3, 'volume', site.units)}, and ${show(programmedM3, 'volume', site.units)} was programmed`
    return [
      {
        subject: supply,
        at: at(reading, 'meter'),
        message: `${supply}: ${counted}.`,
        fix: slip
          ? `If the reading was in ${slip.unit}, write "meter: ${slip.value} ${slip.unit}": that is ${show(slip.meteredM3, 'volume', site.units)}.`
          : 'See whether the meter was changed or ran over, and which unit stands on its face.',
        values: {
          programmed_m3: programmedM3,
          ...(isAbsent(meteredM3) ? {} : { metered_m3: meteredM3 }),
          ...(slip ? { if_slipped_m3: slip.meteredM3 } : {})
        }
      }
    ]
  })
}

/** The flow of the valve against that of its devices, where another unit makes them one. */
function flowSlip({ zone, valves, devices }: Station): Reported[] {
  const [valve] = valves
  const own = devicesFlow(devices)
  if (!valve?.normalFlow || valves.length > 1 || own === undefined) return []
  const { normalFlow } = valve
  if (isNear(normalFlow.si / own, 2)) return []
  const unit = FLOW_UNITS.find(
    one => one !== normalFlow.unit && isSame(quantity(normalFlow.value, one, 'flow').si, own)
  )
  if (unit === undefined) return []
  const times = Math.max(normalFlow.si / own, own / normalFlow.si)
  return [
    {
      subject: zone,
      at: at(valve, 'normal-flow'),
      message: `${zone}: the valve is written with ${showStated(normalFlow)}, ${roundedText(times, 1)} times ${normalFlow.si > own ? 'as much as' : 'less than'} its devices.`,
      fix: `If the figure was in ${unit}, write "normal-flow: ${normalFlow.value} ${unit}".`,
      values: { times }
    }
  ]
}

function devicesFlow(devices: Station['devices']): number | undefined {
  if (devices?.flow) return devices.flow.si
  return devices?.each && devices.count !== undefined ? devices.each.si * devices.count : undefined
}

/** The area of the budget against that of the zones together. */
function areaSlip(site: Site): Reported[] {
  const area = site.budget?.area
  const all = site.stations.map(one => one.area?.si)
  if (!site.budget || !area || all.length === 0 || all.includes(undefined)) return []
  const zoned = sum(all.map(one => one ?? 0))
  const unit = (['ft²', 'm²', 'acre', 'ha'] as const).find(
    one => one !== area.unit && isSame(quantity(area.value, one, 'area').si, zoned)
  )
  if (unit === undefined || isNear(area.si / zoned, 2)) return []
  return [
    {
      subject: '',
      at: at(site.budget, 'area'),
      message: `The budget has ${showStated(area)}, and the zones together are ${show(zoned, 'area', site.units)}.`,
      fix: `If the figure was in ${unit}, write "area: ${area.value} ${unit}".`,
      values: { zones_m2: zoned, budget_m2: area.si }
    }
  ]
}

/** Steeper than one to one nobody waters: a ratio the wrong way round, or degrees. */
function slopeSlip(station: Station): Reported[] {
  const { zone, slope } = station
  const written = slope === undefined ? undefined : slopeOf(slope)
  if (written === undefined || isAbsent(written) || written <= MOST_SLOPE) return []
  const ratio = /^(\S+)\s*:\s*(\S+)$/u.exec(slope ?? '')
  return [
    {
      subject: zone,
      at: at(station, 'slope'),
      message: `${zone}: "slope: ${slope}" is steeper than the ground that anybody waters.`,
      fix: ratio
        ? `A slope is written run to rise: if it rises ${ratio[1]} on ${ratio[2]}, write "slope: ${ratio[2]}:${ratio[1]}".`
        : 'See whether degrees, or millimeters in a meter, were written as percent: 45° is 100 %.',
      values: { slope_percent: written * 100 }
    }
  ]
}

const isNear = (ratio: number, times: number): boolean => ratio > 1 / times && ratio < times
const isSame = (one: number, other: number): boolean => Math.abs(one / other - 1) <= SAME
