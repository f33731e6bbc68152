import { absent, isAbsent } from '../base/absent.ts'
import { DEFAULT_INTERVAL, dueDate } from '../domain/dates/due-date.ts'
import { dueState } from '../domain/dates/due-state.ts'
import { pulsesByMonth } from '../domain/power/pulse-counts.ts'
import type { Controller, Site } from '../model/site.ts'
import { addInterval } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { batteryVisit } from './battery-visit.ts'
import { chargeLife } from './charge-life.ts'
import { coldestMonth } from './coldest-month.ts'
import { fittedSet, idleReason } from './fitted-set.ts'
import type { FittedSet } from './fitted-set.ts'
import type { BatteryPlan, SchedulePlan, Working } from './plan.ts'
import { pulseFollowers } from './programmed-pulses.ts'
import { pulseLife } from './pulse-life.ts'
import { planSolar } from './solar.ts'

export interface BatteriesPlanned {
  /** By controller id; every controller has one, with state "none" where it has no battery to change. */
  readonly batteries: Map<string, BatteryPlan>
  readonly workings: readonly Working[]
}

interface BatteryPlanned {
  readonly plan: BatteryPlan
  readonly workings: readonly Working[]
}

/** When each battery is due, what set the date, and which visit should change it. Visits dated after `on` have not happened yet. */
export function planBatteries(site: Site, on: IsoDate, schedules: ReadonlyMap<string, SchedulePlan>): BatteriesPlanned {
  const planned = site.controllers.map(controller => {
    const pulses = pulsesByMonth(schedules.get(controller.id)?.days ?? [], pulseFollowers(controller))
    return withSolar(site, controller, pulses, planBattery(site, controller, pulses, on))
  })
  return {
    batteries: new Map(planned.map(({ plan }) => [plan.controller, plan])),
    workings: planned.flatMap(({ workings }) => workings)
  }
}

function planBattery(site: Site, controller: Controller, pulses: readonly number[], on: IsoDate): BatteryPlanned {
  const set = fittedSet(site, controller, on)
  const idle = idleReason(site, controller, set)
  if (idle !== undefined) return undated({ controller, set, pulses }, 'none', idle)
  if (set.fitted !== undefined) return dated(site, { controller, set: { ...set, fitted: set.fitted }, pulses }, on)
  const none = undated({ controller, set, pulses }, 'no-date', 'no date on which the battery was fitted')
  return withVisit(site, controller, none, on)
}

interface SetFacts<S extends FittedSet = FittedSet> {
  readonly controller: Controller
  readonly set: S
  readonly pulses: readonly number[]
}

function undated({ controller, set, pulses }: SetFacts, state: 'none' | 'no-date', reason: string): BatteryPlanned {
  const { kind, count, fitted, dateCode } = set
  const plan: BatteryPlan = {
    controller: controller.id,
    kind,
    count,
    dueOn: absent(reason),
    because: reason,
    state,
    ...(fitted ? { fitted } : {}),
    ...(dateCode ? { dateCode } : {}),
    pulsesByMonth: pulses
  }
  return { plan, workings: [] }
}

type DatedSet = FittedSet & { readonly fitted: IsoDate }

function dated(site: Site, facts: SetFacts<DatedSet>, on: IsoDate): BatteryPlanned {
  const { controller, set, pulses } = facts
  const { kind, count, fitted, dateCode } = set
  const interval = controller.battery?.interval ?? controller.sheet?.battery?.interval
  const life = pulseLife(site, controller, fitted)
  const charge = chargeLife(site, controller, set, pulses)
  const coldest = coldestMonth(site, controller, set.kind, pulses)
  const lives = [life?.value.lifeDays, charge?.value.beyond ? undefined : charge?.value.days]
  const known = lives.filter(days => days !== undefined)
  const due = dueDate({
    last: fitted,
    ...(interval ? { interval } : {}),
    ...(known.length > 0 ? { lifeDays: Math.min(...known) } : {}),
    ...(dateCode ? { dateCode } : {})
  })
  if (isAbsent(due)) return undated(facts, 'no-date', due.reason)
  const plan: BatteryPlan = {
    controller: controller.id,
    kind,
    count,
    fitted,
    dueOn: due.value.dueOn,
    because: due.value.words,
    dueBy: {
      because: due.value.because,
      interval: interval ?? DEFAULT_INTERVAL,
      isStated: interval !== undefined
    },
    ...dueState(due.value.dueOn, on),
    intervalDueOn: addInterval(fitted, interval ?? DEFAULT_INTERVAL),
    ...(life ? { pulses: life.value } : {}),
    ...(charge ? { charge: charge.value } : {}),
    ...(coldest ? { coldest } : {}),
    ...(dateCode ? { dateCode } : {}),
    pulsesByMonth: pulses
  }
  const lived = [life, charge].flatMap(one =>
    one ? [{ calculation: 'battery-life', subject: controller.id, steps: one.steps }] : []
  )
  const workings = [...lived, { calculation: 'due-date', subject: `${controller.id} battery`, steps: due.steps }]
  return withVisit(site, controller, { plan, workings }, on)
}

function withVisit(
  site: Site,
  controller: Controller,
  { plan, workings }: BatteryPlanned,
  on: IsoDate
): BatteryPlanned {
  const doAt = batteryVisit(site, controller, plan, on)
  return { plan: { ...plan, ...(doAt ? { doAt } : {}) }, workings }
}

function withSolar(
  site: Site,
  controller: Controller,
  pulses: readonly number[],
  { plan, workings }: BatteryPlanned
): BatteryPlanned {
  const solar = planSolar(site, controller, pulses)
  if (!solar) return { plan, workings }
  const shown =
    solar.steps.length > 0 ? [{ calculation: 'solar-yield', subject: controller.id, steps: solar.steps }] : []
  return { plan: { ...plan, solar: solar.value }, workings: [...workings, ...shown] }
}
