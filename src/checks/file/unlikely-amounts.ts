import { writeRunTime } from '../../domain/schedule/text.ts'
import type { Recorded, Site } from '../../model/site.ts'
import { MOST_CELLS, PLAUSIBLE, isPlausible } from '../../reference/plausible.ts'
import type { Plausible, PlausibleId } from '../../reference/plausible.ts'
import { quantity, unitsOf } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import type { Reported } from '../check.ts'
import { at } from '../at.ts'

/** An amount of the site file, where it stands, and what it is held against. */
interface Amount {
  readonly subject: string
  readonly record: Recorded
  readonly key: string
  readonly amount: Quantity | undefined
  readonly as: PlausibleId
}

/** Amounts that are unlikely by themselves, each with the unit that was probably meant. */
export function unlikelyAmounts(site: Site): Reported[] {
  return [...amountsOf(site).flatMap(judged), ...cycles(site), ...cells(site)]
}

function amountsOf(site: Site): Amount[] {
  return [
    ...site.supplies.flatMap<Amount>(record => [
      { subject: record.id, record, key: 'limit', amount: record.limit, as: 'supply-flow' },
      { subject: record.id, record, key: 'static-pressure', amount: record.staticPressure, as: 'pressure' }
    ]),
    ...site.stations.flatMap(station => stationAmounts(station)),
    ...Object.entries(site.climate?.referenceEt ?? {}).map<Amount>(([month, amount]) => ({
      subject: '',
      record: site.climate ? { at: at(site.climate, 'reference-et') } : site,
      key: month,
      amount,
      as: 'monthly-et'
    }))
  ]
}

function stationAmounts(station: Site['stations'][number]): Amount[] {
  const subject = station.zone
  const { devices, soil } = station
  const drip = devices !== undefined && /drip|emitter/iu.test(devices.kind)
  return [
    { subject, record: station, key: 'area', amount: station.area, as: 'area' },
    ...(devices ? [{ subject, record: devices, key: 'flow', amount: devices.flow, as: 'station-flow' } as const] : []),
    ...(drip ? [{ subject, record: devices, key: 'each', amount: devices.each, as: 'drip-emitter' } as const] : []),
    ...(soil ? [{ subject, record: soil, key: 'root-depth', amount: soil.rootDepth, as: 'root-depth' } as const] : []),
    ...station.wire.flatMap<Amount>(record => [
      { subject, record, key: 'length', amount: record.length.si === 0 ? undefined : record.length, as: 'wire-length' },
      { subject, record, key: 'cover', amount: record.cover, as: 'cover' }
    ]),
    ...station.valves.flatMap<Amount>(record => [
      { subject, record, key: 'coil-resistance', amount: record.coilResistance, as: 'coil-resistance' },
      { subject, record, key: 'lowest-volts', amount: record.lowestVolts, as: 'coil-volts' },
      { subject, record, key: 'normal-flow', amount: record.normalFlow, as: 'station-flow' },
      { subject, record, key: 'normal-pressure', amount: record.normalPressure, as: 'pressure' }
    ])
  ]
}

function judged({ subject, record, key, amount, as }: Amount): Reported[] {
  const range: Plausible = PLAUSIBLE[as]
  if (!amount || isPlausible(amount.si, range)) return []
  const meant = range.units.find(unit => couldBe(amount, unit, range))
  const name = subject === '' ? '' : `${subject}: `
  return [
    {
      subject,
      at: at(record, key),
      message: `${name}"${key}: ${showStated(amount)}" is not likely for ${range.what}.`,
      why: range.reason,
      fix:
        meant === undefined
          ? 'Look at the record again.'
          : `If it was ${meant}, write "${key}: ${amount.value} ${meant}".`,
      sources: [range.source],
      values: { value: amount.value, unit: amount.unit }
    }
  ]
}

function couldBe(amount: Quantity, unit: string, range: Plausible): boolean {
  if (unit === amount.unit || !unitsOf(amount.dimension).includes(unit)) return false
  return isPlausible(quantity(amount.value, unit, amount.dimension).si, range)
}

/** A run time that no valve can follow, or that drowns what it waters: hours for minutes, seconds for minutes. */
function cycles(site: Site): Reported[] {
  const range: Plausible = PLAUSIBLE['cycle-time']
  return site.controllers.flatMap(controller =>
    controller.programs.flatMap(program =>
      program.stations
        .filter(one => !isPlausible(one.runTime.cycleS, range))
        .map(one => ({
          subject: controller.id,
          at: one.at,
          message: `${controller.id}, program ${program.id}: station ${one.number} runs ${writeRunTime(one.runTime)}, which is not likely.`,
          why: range.reason,
          fix: 'See whether minutes were meant.',
          sources: [range.source],
          values: { cycle_s: one.runTime.cycleS }
        }))
    )
  )
}

/** A count that is a slip of the keys: 11 for 1. */
function cells(site: Site): Reported[] {
  return site.controllers.flatMap(({ id, battery }) => {
    if (!battery || battery.count <= MOST_CELLS) return []
    return [
      {
        subject: id,
        at: at(battery, 'count'),
        message: `${id}: ${battery.count} cells in one controller are not likely.`,
        fix: 'Count them again.',
        values: { cells: battery.count }
      }
    ]
  })
}
