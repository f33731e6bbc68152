import { absent, isAbsent, isPresent } from '../base/absent.ts'
import { DAY_KINDS } from '../domain/schedule/day-choices.ts'
import { stationMonths } from '../domain/schedule/months.ts'
import type { PlacedStart } from '../domain/schedule/place-starts.ts'
import type { ScheduledController, ScheduledProgram } from '../domain/schedule/controller.ts'
import type { Controller, Site } from '../model/site.ts'
import { yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { dailyCaps } from './advice-caps.ts'
import type { DailyCaps } from './advice-caps.ts'
import { adviceGroups } from './advice-groups.ts'
import { zoneNeed } from './advice-need.ts'
import type { ZoneNeed } from './advice-need.ts'
import type { AdvicePlan, AdvisedProgram, GivenPlan, UnmetPlan } from './advice-plan.ts'
import { lengthS } from './advice-program.ts'
import { allowedTimesOf } from './advice-rules.ts'
import type { AllowedTimes } from './advice-rules.ts'
import { solveAdvice } from './advice-solve.ts'
import { adviceWorkings } from './advice-workings.ts'
import type { SchedulePlan, WaterPlan, Working } from './plan.ts'
import { scheduledController } from './schedules.ts'
import { stationFlowM3s } from './station-flow.ts'

export interface AdvicePlanned {
  /** By controller id; none for a controller without programs, or one that is out of service. */
  readonly advice: ReadonlyMap<string, AdvicePlan>
  /** By station id; none where the rate is not known. */
  readonly given: ReadonlyMap<string, GivenPlan>
  readonly workings: readonly Working[]
}

/**
 * For each controller the programs that would meet what its zones need, in the terms it can be set in and within the rules of the site, as
 * near to what is set as can be; or which limit stands in the way, and by how much. Controllers on one supply are fitted in beside each other
 * in the order of the site file.
 */
export function planAdvice(
  site: Site,
  on: IsoDate,
  schedules: ReadonlyMap<string, SchedulePlan>,
  water: ReadonlyMap<string, WaterPlan>
): AdvicePlanned {
  const advice = new Map<string, AdvicePlan>()
  const timesOf = allowedTimesOf(site, yearOf(on))
  const workings: Working[] = []
  const onSupply = new Map<string, PlacedStart[]>()
  for (const controller of site.controllers) {
    const scheduled = scheduledController(site, controller)
    const programs = scheduled.programs.filter(one => one.stations.length > 0 && one.starts.length > 0)
    if (programs.length === 0) continue
    const supply = supplyOf(site, controller)
    const others = onSupply.get(supply) ?? []
    const {
      plan,
      placed,
      workings: own
    } = advise({
      site,
      controller,
      scheduled: { ...scheduled, programs },
      others,
      water,
      year: yearOf(on),
      timesOf
    })
    advice.set(controller.id, plan)
    workings.push(...own)
    onSupply.set(supply, [...others, ...placed])
  }
  return { advice, given: givenOf(site, yearOf(on), schedules, water, advice), workings }
}

interface AdviseOf {
  readonly site: Site
  readonly controller: Controller
  readonly scheduled: ScheduledController
  readonly others: readonly PlacedStart[]
  readonly water: ReadonlyMap<string, WaterPlan>
  readonly year: number
  readonly timesOf: (controller: Controller) => AllowedTimes
}

interface Advised {
  readonly plan: AdvicePlan
  readonly placed: readonly PlacedStart[]
  readonly workings: readonly Working[]
}

function advise(of: AdviseOf): Advised {
  const { site, controller, scheduled, others, year } = of
  const { needs, notJudged } = needsOf(of)
  const asSet = asSetPlaced(of)
  const base = {
    controller: controller.id,
    notJudged,
    unmet: [] as readonly UnmetPlan[],
    programs: [] as readonly AdvisedProgram[]
  }
  if (needs.size === 0) return { plan: { ...base, verdict: 'not-known' }, placed: asSet, workings: [] }
  const groups = adviceGroups(controller, scheduled.programs, needs, capsOf(of))
  if (!groups) {
    const unmet: UnmetPlan = {
      kind: 'programs',
      subject: controller.id,
      needed: scheduled.programs.length,
      allowed: controller.sheet?.programs ?? 0
    }
    return { plan: { ...base, verdict: 'cannot', unmet: [unmet] }, placed: asSet, workings: [] }
  }
  const supply = site.supplies.find(one => one.id === supplyOf(site, controller))
  const times = of.timesOf(controller)
  const solved = solveAdvice({
    controller,
    scheduled,
    groups,
    times,
    year,
    kinds: controller.sheet?.dayRules ?? DAY_KINDS,
    supply: { limitM3s: supply?.limit?.si, zonesAtOnce: supply?.zonesAtOnce },
    others
  })
  if ('unmet' in solved)
    return { plan: { ...base, verdict: 'cannot', unmet: [solved.unmet] }, placed: asSet, workings: [] }
  const { programs, placed } = solved
  const verdict = programs.some(one => one.isChanged) ? 'change' : 'as-set'
  const workings = adviceWorkings({ site, controller, programs, needs, times, stepS: scheduled.stepS })
  return { plan: { ...base, programs, verdict }, placed, workings }
}

function needsOf({ site, controller, scheduled, water }: AdviseOf) {
  const needs = new Map<number, ZoneNeed>()
  const notJudged: { station: string; reason: string }[] = []
  const numbers = new Set(scheduled.programs.flatMap(one => one.stations.map(({ number }) => number)))
  for (const number of numbers) {
    const station = site.stations.find(one => one.controller === controller.id && one.number === number)
    const own = station && water.get(station.id)
    const need = own ? zoneNeed(station, own) : absent('nothing is said of the station')
    if (isAbsent(need)) notJudged.push({ station: `${controller.id}/${number}`, reason: need.reason })
    else needs.set(number, need)
  }
  return { needs, notJudged }
}

function capsOf({ site, controller, scheduled, water, year }: AdviseOf): ReadonlyMap<number, DailyCaps> {
  const capsOn = dailyCaps({ site, controller: controller.id, year })
  const numbers = new Set(scheduled.programs.flatMap(one => one.stations.map(({ number }) => number)))
  return new Map(
    [...numbers].flatMap(number => {
      const rate = water.get(`${controller.id}/${number}`)?.rateMPerS ?? absent('nothing is said of the station')
      const capsS = capsOn(number, rate)
      return capsS ? [[number, capsS] as const] : []
    })
  )
}

/** A controller draws from the supply that it names; one that names none from the site's only supply. */
function supplyOf(site: Site, controller: Controller): string {
  return controller.supply ?? (site.supplies.length === 1 ? site.supplies[0]?.id : undefined) ?? `none ${controller.id}`
}

function asSetPlaced({ site, controller, scheduled, timesOf }: AdviseOf): readonly PlacedStart[] {
  const flowOf = (number: number) => {
    const station = site.stations.find(one => one.controller === controller.id && one.number === number)
    const flow = station && stationFlowM3s(station)
    return flow !== undefined && isPresent(flow) ? flow : 0
  }
  return scheduled.programs.flatMap(program =>
    program.starts.map(start => ({
      controller: controller.id,
      days: program.days,
      fromMinute: start,
      toMinute: start + lengthS(program, scheduled) / 60,
      ahead: timesOf(controller).ahead,
      flowM3s: Math.max(0, ...program.stations.map(({ number }) => flowOf(number)))
    }))
  )
}

function givenOf(
  site: Site,
  year: number,
  schedules: ReadonlyMap<string, SchedulePlan>,
  water: ReadonlyMap<string, WaterPlan>,
  advice: ReadonlyMap<string, AdvicePlan>
): ReadonlyMap<string, GivenPlan> {
  const given = new Map<string, GivenPlan>()
  const advised = new Map(
    site.controllers.flatMap(controller => {
      const plan = advice.get(controller.id)
      if (plan?.verdict !== 'change') return []
      const programs: readonly ScheduledProgram[] = plan.programs
      const scheduled = { ...scheduledController(site, controller), programs }
      return [[controller.id, stationMonths(scheduled, year, site.season ? { season: site.season } : {})] as const]
    })
  )
  for (const station of site.stations) {
    const plan = water.get(station.id)
    if (!plan || station.outOfService !== undefined || isAbsent(plan.rateMPerS)) continue
    const { rateMPerS } = plan
    const depths = (rows: readonly { readonly station: number; readonly minutes: readonly number[] }[]) =>
      Array.from({ length: 12 }, (_, index) =>
        rows.reduce(
          (total, row) => total + (row.station === station.number ? (row.minutes[index] ?? 0) * 60 * rateMPerS : 0),
          0
        )
      )
    const need = zoneNeed(station, plan)
    const rows = advised.get(station.controller)
    given.set(station.id, {
      station: station.id,
      needM: isAbsent(need) ? need : need.applyM,
      setM: depths(schedules.get(station.controller)?.months ?? []),
      ...(rows ? { advisedM: depths(rows) } : {})
    })
  }
  return given
}
