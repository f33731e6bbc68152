import type { State, Value } from './blocks.ts'
import { computed, notComputed } from './values.ts'
import { isAbsent } from '../base/absent.ts'
import type { BatteryPlan, BatteryState } from '../plan/plan.ts'
import type { Words } from '../words/words.ts'

const SHAPES: Readonly<Record<BatteryState, State>> = {
  ok: 'good',
  'due-soon': 'soon',
  overdue: 'bad',
  'no-date': 'unknown',
  none: 'unknown'
}

export const batteryShape = (battery: BatteryPlan): State => SHAPES[battery.state]

export function batteryStateValue(battery: BatteryPlan, words: Words): Value {
  return { ...computed(words.binder.batteries.states[battery.state], 'due-date'), state: batteryShape(battery) }
}

export function batteryDueValue(battery: BatteryPlan, words: Words): Value {
  return isAbsent(battery.dueOn)
    ? notComputed(words, battery.dueOn.reason)
    : { ...computed(battery.dueOn, 'due-date'), mono: true }
}
