import { groupBy } from '../base/collections.ts'
import type { Controller } from '../model/site.ts'
import type { BatteryPlan } from '../plan/plan.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'

/** Controllers whose batteries are alike in all that is told of them, so that it is told once. */
export interface BatteryGroup {
  /** "C3, C4", "MR-01 … MR-16 (13)". */
  readonly ids: string
  readonly controllers: readonly Controller[]
  readonly battery: BatteryPlan
}

export function batteryGroups({ site, plan }: Pick<PageContext, 'site' | 'plan'>): BatteryGroup[] {
  const pairs = site.controllers.flatMap(controller => {
    const battery = plan.batteries.get(controller.id)
    return battery ? [{ controller, battery }] : []
  })
  const alike = groupBy(pairs, ({ controller, battery }) =>
    JSON.stringify([controller.sheetPath, controller.power, { ...battery, controller: '' }])
  )
  return [...alike.values()].flatMap(group => {
    const first = group[0]
    if (!first) return []
    const controllers = group.map(({ controller }) => controller)
    return [{ ids: rangeOf(controllers.map(({ id }) => id)), controllers, battery: first.battery }]
  })
}
