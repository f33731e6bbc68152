import { rangeOf } from './range.ts'
import { groupBy } from '../base/collections.ts'
import { loadVolts } from '../domain/power/load-volts.ts'
import type { BatteryPlan } from '../plan/plan.ts'
import type { BatteryVolts } from '../reference/battery-volts.ts'
import type { Words } from '../words/words.ts'

/** A kind and number of cells, the controllers that carry it, and the volts it is judged by where they are known. */
export interface BatterySet {
  readonly name: string
  readonly controllers: string
  readonly volts?: BatteryVolts
}

/** The sets of some controllers, each once. A set of several 9 V batteries is measured one by one. */
export function batterySets(batteries: readonly BatteryPlan[], words: Words): BatterySet[] {
  const sets = groupBy(
    batteries.filter(one => one.count > 0),
    one => `${one.count} × ${one.kind}`
  )
  return [...sets].map(([written, alike]) => {
    const count = alike[0]?.count ?? 0
    const volts = loadVolts(alike[0]?.kind ?? '', count)
    const each = volts !== undefined && volts.cells < count
    return {
      name: each ? words.faults.battery.each(written) : written,
      controllers: rangeOf(alike.map(one => one.controller)),
      ...(volts ? { volts } : {})
    }
  })
}

/** "9 to 9.6 V", "about 8 V", and where the set has failed. */
export function voltTexts(volts: BatteryVolts, words: Words): { newRest: string; change: string; failed?: string } {
  const w = words.faults.battery
  const range = ({ least, most }: { readonly least: number; readonly most: number }): string =>
    w.range(least.toFixed(1), most.toFixed(1))
  return {
    newRest: range(volts.newRestVolt),
    change: w.below(volts.changeBelowVolt.toFixed(1)),
    ...(volts.failedNearVolt ? { failed: range(volts.failedNearVolt) } : {})
  }
}
