import type { Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'
import { plate, stated } from './values.ts'
import { groupBy } from '../base/collections.ts'
import { loadVolts } from '../domain/power/load-volts.ts'
import type { BatteryPlan } from '../plan/plan.ts'
import type { BatteryVolts } from '../reference/battery-volts.ts'
import { showStated } from '../units/show.ts'
import type { Words } from '../words/words.ts'

/** A kind and number of cells, the controllers that carry it, and the volts it is judged by where they are known. */
export interface BatterySet {
  readonly name: string
  readonly controllers: string
  /** From memory. */
  readonly volts?: BatteryVolts
  /** Change it below this, under load, as the product sheet states it: it comes before what is from memory. */
  readonly sheetChange?: string
}

/** The sets of some controllers, each once for each figure that their sheets state. A set of several 9 V batteries is measured one by one. */
export function batterySets(
  batteries: readonly BatteryPlan[],
  { site, words }: Pick<PageContext, 'site' | 'words'>
): BatterySet[] {
  const sheetChange = ({ controller }: BatteryPlan): string => {
    const below = site.controllers.find(one => one.id === controller)?.sheet?.battery?.changeBelow
    return below ? showStated(below) : ''
  }
  const sets = groupBy(
    batteries.filter(one => one.count > 0),
    one => JSON.stringify([one.count, one.kind, sheetChange(one)])
  )
  return [...sets.values()].flatMap(alike => {
    const [first] = alike
    if (!first) return []
    const written = `${first.count} × ${first.kind === 'not stated' ? words.faults.battery.kindUnknown : first.kind}`
    const volts = loadVolts(first.kind, first.count)
    const each = volts !== undefined && volts.cells < first.count
    const stated = sheetChange(first)
    return [
      {
        name: each ? words.faults.battery.each(written) : written,
        controllers: rangeOf(alike.map(one => one.controller)),
        ...(volts ? { volts } : {}),
        ...(stated === '' ? {} : { sheetChange: stated })
      }
    ]
  })
}

/** New at rest, where to change it and where it has failed, each with its standing; a dash where nothing is known. */
export function voltValues(set: BatterySet, words: Words): { newRest: Value; change: Value; failed: Value } {
  const { newRest, change, failed } = voltTexts(set, words)
  const memory = (text: string | undefined): Value =>
    text === undefined
      ? stated(words.faults.battery.noFigure)
      : { text, standing: 'common-practice', note: words.power.cells.memory }
  return {
    newRest: memory(newRest),
    change: set.sheetChange === undefined ? memory(change) : plate(set.sheetChange),
    failed: memory(failed)
  }
}

/** From memory: "9 to 9.6 V", "about 8 V", and where the set has failed. */
export function voltTexts(
  { volts }: BatterySet,
  words: Words
): { readonly newRest?: string; readonly change?: string; readonly failed?: string } {
  if (!volts) return {}
  const w = words.faults.battery
  const range = ({ least, most }: { readonly least: number; readonly most: number }): string =>
    w.range(least.toFixed(1), most.toFixed(1))
  return {
    newRest: range(volts.newRestVolt),
    change: w.below(volts.changeBelowVolt.toFixed(1)),
    ...(volts.failedNearVolt ? { failed: range(volts.failedNearVolt) } : {})
  }
}
