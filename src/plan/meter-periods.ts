import { absent, isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { groupBy, sortedBy } from '../base/collections.ts'
import { daysFrom } from '../domain/schedule/calendar-days.ts'
import type { ScheduledController } from '../domain/schedule/controller.ts'
import { dayRuns } from '../domain/schedule/expand-year.ts'
import { DAY_S, openingS } from '../domain/schedule/run-times.ts'
import { runsOf } from '../domain/schedule/year-runs.ts'
import { meteredM3 } from '../domain/water/meter-units.ts'
import type { Recorded, Site, Supply } from '../model/site.ts'
import { daysInMonth, epochDay, fromEpochDay, monthOf, yearOf } from '../units/date.ts'
import type { EpochDay, IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import { allOf } from './budget-zones.ts'
import type { BudgetMonth, MeterPeriod } from './budget-plan.ts'
import { meterSlip } from './meter-slip.ts'
import { scheduledController } from './schedules.ts'
import { stationFlowM3s } from './station-flow.ts'
import { controllersOn } from './supply-peaks.ts'

/** Readings are taken by day, so a night's water falls between the right two. Rule of the project. */
const NOON_S = DAY_S / 2

interface MeterReading {
  readonly on: IsoDate
  readonly meter: Quantity<'volume'>
  readonly record: Recorded
}

/** What each meter counted from one visit to the next, beside what was programmed and allowed for those days. */
export function meterPeriods(site: Site, months: readonly BudgetMonth[]): MeterPeriod[] {
  return [...readingsOf(site)].flatMap(([id, readings]) => {
    const supply = site.supplies.find(one => one.id === id)
    return supply ? periodsOf(site, supply, readings, months) : []
  })
}

function readingsOf(site: Site): ReadonlyMap<string, readonly MeterReading[]> {
  const all = site.visits.flatMap(visit =>
    visit.readings.flatMap(reading =>
      reading.supply !== undefined && reading.meter
        ? [{ supply: reading.supply, on: visit.on, meter: reading.meter, record: reading }]
        : []
    )
  )
  return groupBy(
    sortedBy(all, one => one.on),
    one => one.supply
  )
}

function periodsOf(
  site: Site,
  supply: Supply,
  readings: readonly MeterReading[],
  months: readonly BudgetMonth[]
): MeterPeriod[] {
  const periods: MeterPeriod[] = []
  // A slip is counted once: the next stretch starts from what the meter showed.
  let shownM3 = readings[0]?.meter.si ?? 0
  for (const [index, { on, meter, record }] of readings.entries()) {
    const earlier = readings[index - 1]
    if (!earlier || earlier.on === on) {
      shownM3 = meter.si
      continue
    }
    const [from, to] = [earlier.on, on]
    const { programmedM3, wateringDays } = programmedBetween(site, supply, from, to)
    const metered = meteredM3(shownM3, meter.si)
    const slip = meterSlip(shownM3, meter, programmedM3)
    periods.push({
      supply: supply.id,
      from,
      to,
      days: epochDay(to) - epochDay(from),
      reading: record,
      meteredM3: metered,
      programmedM3,
      wateringDays,
      allowanceM3: allowanceBetween(months, from, to),
      ...(slip ? { slip } : {})
    })
    shownM3 = slip ? shownM3 + slip.meteredM3 : isAbsent(metered) ? meter.si : shownM3 + metered
  }
  return periods
}

/** As the programs stand now, from noon to noon. */
function programmedBetween(
  site: Site,
  supply: Supply,
  from: IsoDate,
  to: IsoDate
): Pick<MeterPeriod, 'programmedM3' | 'wateringDays'> {
  const [first, last] = [epochDay(from), epochDay(to)]
  const [fromS, toS] = [first * DAY_S + NOON_S, last * DAY_S + NOON_S]
  const days = daysFrom(first, last - first + 1)
  const watering = new Set<EpochDay>()
  let programmedM3 = 0
  for (const controller of controllersOn(site, supply)) {
    const flows = flowsOf(site, controller.id)
    const scheduled = countedBack(scheduledController(site, controller), first)
    for (const run of runsOf(dayRuns(scheduled, days, site.season))) {
      const opens = openingS(run)
      if (opens < fromS || opens >= toS) continue
      programmedM3 += (flows.get(run.station) ?? 0) * run.durationS
      watering.add(run.day)
    }
  }
  return { programmedM3, wateringDays: watering.size }
}

/** A program that counts days from a date to come is taken to have counted so before, since no older program is on file. */
function countedBack(controller: ScheduledController, first: EpochDay): ScheduledController {
  const programs = controller.programs.map(program => {
    const { days } = program
    if (days.kind !== 'every-n-days') return program
    const periods = Math.max(0, Math.ceil((epochDay(days.from) - first) / days.every))
    return { ...program, days: { ...days, from: fromEpochDay(epochDay(days.from) - periods * days.every) } }
  })
  return { ...controller, programs }
}

function flowsOf(site: Site, controller: string): ReadonlyMap<number, number> {
  return new Map(
    site.stations.flatMap(station => {
      const flow = stationFlowM3s(station)
      return station.controller === controller && isPresent(flow) ? [[station.number, flow] as const] : []
    })
  )
}

/** Each day its part of the month's allowance. */
function allowanceBetween(months: readonly BudgetMonth[], from: IsoDate, to: IsoDate): Maybe<number> {
  const days: EpochDay[] = []
  for (let day = epochDay(from); day < epochDay(to); day += 1) days.push(day)
  return allOf(
    days.map(day => {
      const iso = fromEpochDay(day)
      const month = months[monthOf(iso) - 1]?.allowanceM3 ?? absent('no budget is stated')
      return isAbsent(month) ? month : month / daysInMonth(yearOf(iso), monthOf(iso))
    })
  )
}
