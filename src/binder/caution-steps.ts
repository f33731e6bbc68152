import type { CautionId } from '../domain/safety/cautions.ts'
import type { Site } from '../model/site.ts'
import { GUARD_LEAST_M } from '../reference/guard-height.ts'
import { showWindow } from '../units/clock.ts'
import { showStated } from '../units/show.ts'
import type { CautionWords } from '../words/en-US/cautions.ts'

/** Steps that only this site's file can give; they stand before all others. */
export function siteSteps(site: Site, id: CautionId, { steps }: CautionWords): readonly string[] {
  const { workRules: rules, winter, units } = site
  if (id === 'traffic')
    return [
      ...(rules.trafficControlPlan ? [steps.trafficPlan(rules.trafficControlPlan)] : []),
      ...(rules.laneClosure ? [steps.closureHours(showWindow(rules.laneClosure, units))] : [])
    ]
  if (id === 'fall-edge') {
    const low = rules.parapet && rules.parapet.si < GUARD_LEAST_M
    return [
      ...(low && rules.parapet ? [steps.parapet(showStated(rules.parapet), steps.guard)] : []),
      ...(rules.anchors?.length ? [steps.anchors(rules.anchors.join(', '))] : [])
    ]
  }
  if (id === 'mains') return rules.isolation ? [steps.isolation(rules.isolation)] : []
  if (id === 'blow-out') return winter?.lowestRated ? [steps.airPressure(showStated(winter.lowestRated))] : []
  return []
}
