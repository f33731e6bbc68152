import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { runTime } from '../domain/water/run-time.ts'
import type { Controller, Program, Site, Station } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'
import type { ClimatePlan } from './climate-plan.ts'
import type { StationMonths, WaterMonth } from './plan.ts'
import type { NeedPlan } from './water-plan.ts'

export interface WaterMonthsOf {
  readonly site: Site
  readonly station: Station
  readonly climate: ClimatePlan
  readonly controller: Controller | undefined
  /** What its programs give it, as planned. */
  readonly rows: readonly StationMonths[]
  readonly rateMPerS: Maybe<number>
  readonly year: number
  /** Step of the controller's run times. */
  readonly stepS: number
}

/** A program's row that waters in a month. */
export interface ActiveRow {
  readonly row: StationMonths
  readonly program: Program
  /** Starts times cycles on a watering day. */
  readonly cycles: number
}

/** Programs that open the valve in each month, January first. */
export function activePrograms(of: WaterMonthsOf): Program[][] {
  return MONTHS.map((_, index) => activeRows(of, index).map(({ program }) => program))
}

/** Twelve months, January first. */
export function waterMonths(of: WaterMonthsOf, need: NeedPlan): WaterMonth[] {
  return MONTHS.map((_, index) => waterMonth(of, need, index))
}

function waterMonth(of: WaterMonthsOf, need: NeedPlan, index: number): WaterMonth {
  const active = activeRows(of, index)
  const events = sum(active.map(({ row }) => row.days[index] ?? 0))
  const set = sum(active.map(({ row }) => row.minutes[index] ?? 0)) * 60
  const needM = need.months[index]?.needM ?? absent('there is no such month')
  const needS = neededS(of, { needM, delivery: need.delivery }, events, active)
  return { needM, events, setS: events > 0 ? set / events : 0, needS }
}

/** Rows that open the valve in a month. */
export function activeRows({ rows, controller, station }: WaterMonthsOf, index: number): ActiveRow[] {
  return rows.flatMap(row => {
    const program = controller?.programs.find(one => one.id === row.program)
    const entry = program?.stations.find(one => one.number === station.number)
    if (!program || !entry || !((row.minutes[index] ?? 0) > 0)) return []
    return [{ row, program, cycles: entry.runTime.cycles * program.starts.length }]
  })
}

function neededS(
  of: WaterMonthsOf,
  { needM, delivery }: Pick<NeedPlan, 'delivery'> & Pick<WaterMonth, 'needM'>,
  events: number,
  active: readonly ActiveRow[]
): Maybe<number> {
  const { rateMPerS, stepS, site } = of
  if (isAbsent(needM)) return needM
  if (isAbsent(rateMPerS)) return rateMPerS
  if (isAbsent(delivery)) return delivery
  const cyclesPerEvent = Math.max(...active.map(({ cycles }) => cycles))
  const facts = { needM, delivery: delivery.delivery, rateMPerS, events, cyclesPerEvent, stepS }
  const worked = runTime(facts, site.units)
  return isAbsent(worked) ? worked : worked.value.cycleS * cyclesPerEvent
}
