import { loadVolts } from '../../domain/power/load-volts.ts'
import type { Controller, Site, VisitBattery } from '../../model/site.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import type { IsoDate } from '../../units/date.ts'
import { sortedBy } from '../../base/collections.ts'
import { showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { setText } from './set-text.ts'

export const lowUnderLoad: SiteCheck = {
  card: {
    code: 'power/low-under-load',
    severity: 'warning',
    looksAt: 'The last reading of a set under load, against the volts at which it is to be changed.',
    why: 'A spent cell recovers at rest and reads well; under the pulse it sags, and the closing pulse is the one that fails.',
    sources: ['product-sheet', 'from-memory'],
    fix: 'Change the set at the next visit, whatever its due date says.',
    worked: {
      example: `on: 2026-04-20
batteries: [{ controller: K1, rest: 9.1 V, under-load: 7.6 V }]`,
      instead: `on: 2026-04-20
batteries: [{ controller: K1, rest: 9.1 V, under-load: 8.6 V }]`
    }
  },
  run: ({ site, plan, on }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || battery.state === 'none') continue
      const read = lastReading(site, controller, battery, on)
      const limit = limitOf(controller, battery)
      if (!read?.line.underLoad || !limit || read.line.underLoad.si >= limit.volt) continue
      const shown = showStated(read.line.underLoad)
      const rested = read.line.rest ? `, ${showStated(read.line.rest)} at rest` : ''
      report({
        subject: controller.id,
        at: at(read.line, 'under-load'),
        message: `${controller.id}: on ${read.on} the set read ${shown} under load${rested}; below ${limit.text} it is changed${limit.by}.`,
        fix: `Fit ${setText(battery)} at the next visit, see every valve open and close, and record it.`,
        values: { under_load_volt: read.line.underLoad.si, change_below_volt: limit.volt }
      })
    }
  }
}

interface Limit {
  readonly volt: number
  readonly text: string
  readonly by: string
}

function limitOf({ sheet }: Controller, { kind, count }: BatteryPlan): Limit | undefined {
  const stated = sheet?.battery?.changeBelow
  if (stated) return { volt: stated.si, text: showStated(stated), by: ' by its sheet' }
  const usual = loadVolts(kind, count)?.changeBelowVolt
  return usual === undefined
    ? undefined
    : { volt: usual, text: `${usual} V`, by: ', from memory, for want of a figure on its sheet' }
}

/** The latest reading under load of the set that is in the controller now. */
function lastReading(
  site: Site,
  { id }: Controller,
  { fitted }: BatteryPlan,
  on: IsoDate
): { readonly line: VisitBattery; readonly on: IsoDate } | undefined {
  const lines = site.visits
    .filter(visit => visit.on <= on && visit.on >= (fitted ?? visit.on))
    .flatMap(visit => visit.batteries.map(line => ({ line, on: visit.on })))
    .filter(({ line }) => line.controller === id && line.underLoad && (line.fitted ?? fitted) === fitted)
  return sortedBy(lines, one => one.on).at(-1)
}
