import { absent, isAbsent } from '../base/absent.ts'
import { DEFAULT_INTERVAL, dueDate } from '../domain/dates/due-date.ts'
import { dueState } from '../domain/dates/due-state.ts'
import type { Controller, Site } from '../model/site.ts'
import { addInterval } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { fittedSet, idleReason } from './fitted-set.ts'
import type { FittedSet } from './fitted-set.ts'
import type { BatteryPlan, Working } from './plan.ts'
import { pulseLife } from './pulse-life.ts'

export interface BatteriesPlanned {
  /** By controller id; every controller has one, with state "none" where it has no battery to change. */
  readonly batteries: Map<string, BatteryPlan>
  readonly workings: readonly Working[]
}

interface BatteryPlanned {
  readonly plan: BatteryPlan
  readonly workings: readonly Working[]
}

/** When each battery is due, and what set the date. Visits dated after `on` have not happened yet. */
export function planBatteries(site: Site, on: IsoDate): BatteriesPlanned {
  const planned = site.controllers.map(controller => planBattery(site, controller, on))
  return {
    batteries: new Map(planned.map(({ plan }) => [plan.controller, plan])),
    workings: planned.flatMap(({ workings }) => workings)
  }
}

function planBattery(site: Site, controller: Controller, on: IsoDate): BatteryPlanned {
  const set = fittedSet(site, controller, on)
  const idle = idleReason(site, controller, set)
  if (idle !== undefined) return undated(controller, set, 'none', idle)
  return set.fitted === undefined
    ? undated(controller, set, 'no-date', 'no date on which the battery was fitted')
    : dated(site, controller, { ...set, fitted: set.fitted }, on)
}

function undated(controller: Controller, set: FittedSet, state: 'none' | 'no-date', reason: string): BatteryPlanned {
  const { kind, count, fitted } = set
  const plan: BatteryPlan = {
    controller: controller.id,
    kind,
    count,
    dueOn: absent(reason),
    because: reason,
    state,
    ...(fitted ? { fitted } : {})
  }
  return { plan, workings: [] }
}

type DatedSet = FittedSet & { readonly fitted: IsoDate }

function dated(site: Site, controller: Controller, set: DatedSet, on: IsoDate): BatteryPlanned {
  const { kind, count, fitted, dateCode } = set
  const interval = controller.battery?.interval ?? controller.sheet?.battery?.interval
  const life = pulseLife(site, controller, fitted)
  const due = dueDate({
    last: fitted,
    ...(interval ? { interval } : {}),
    ...(life ? { lifeDays: life.value.lifeDays } : {}),
    ...(dateCode ? { dateCode } : {})
  })
  if (isAbsent(due)) return undated(controller, set, 'no-date', due.reason)
  const plan: BatteryPlan = {
    controller: controller.id,
    kind,
    count,
    fitted,
    dueOn: due.value.dueOn,
    because: due.value.words,
    ...dueState(due.value.dueOn, on),
    intervalDueOn: addInterval(fitted, interval ?? DEFAULT_INTERVAL),
    ...(life ? { pulses: life.value } : {})
  }
  const lived = life ? [{ calculation: 'battery-life', subject: controller.id, steps: life.steps }] : []
  return {
    plan,
    workings: [...lived, { calculation: 'due-date', subject: `${controller.id} battery`, steps: due.steps }]
  }
}
