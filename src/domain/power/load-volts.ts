import { BATTERY_VOLTS } from '../../reference/battery-volts.ts'
import type { BatteryVolts } from '../../reference/battery-volts.ts'
import { batteryKind } from './battery-kind.ts'

/** Volts by which a set is judged where its sheet says nothing; undefined for a set not known here. 9 V batteries are measured one by one. */
export function loadVolts(kind: string, count: number): BatteryVolts | undefined {
  const known = batteryKind(kind)
  return BATTERY_VOLTS.find(
    one => one.kind === known?.name && (one.cells === count || (one.cells === 1 && known.size === '9 V'))
  )
}
