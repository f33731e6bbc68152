import type { BatteryRow } from './pages.ts'
import type { PageContext } from './context.ts'
import { batteryDueValue, batteryShape } from './battery-value.ts'
import { orNotSupplied } from './values.ts'
import type { BatteryPlan } from '../plan/plan.ts'

export function batteryRow(battery: BatteryPlan, { words }: Pick<PageContext, 'words'>): BatteryRow {
  return {
    controller: battery.controller,
    kind:
      battery.kind === 'not stated'
        ? words.binder.notSupplied
        : battery.count > 0
          ? `${battery.count} × ${battery.kind}`
          : battery.kind,
    fitted: orNotSupplied(battery.fitted, words, true),
    due: batteryDueValue(battery, words),
    state: batteryShape(battery),
    word: words.binder.batteries.states[battery.state]
  }
}
