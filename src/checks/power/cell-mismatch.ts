import { groupBy, sortedBy, sum } from '../../base/collections.ts'
import { sameBattery } from '../../domain/power/battery-kind.ts'
import type { Controller, Site, VisitBattery } from '../../model/site.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import type { IsoDate } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { setText } from './set-text.ts'

export const cellMismatch: SiteCheck = {
  card: {
    code: 'power/cell-mismatch',
    severity: 'warning',
    looksAt:
      'The kind and number of cells in a controller, against its product sheet, and a set that was mixed at a visit.',
    why: 'Other cells give another voltage under the pulse and last another time; in a mixed set the weakest cell is driven backward and leaks.',
    sources: ['product-sheet', 'iec-60086-5'],
    fix: 'Fit one whole set of the kind on the sheet, all of one make and bought together.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V zinc-carbon, count: 1, fitted: 2026-03-20 } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 6LR61, count: 1, fitted: 2026-03-20 } }`
    }
  },
  run: ({ site, plan, on }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || battery.state === 'none') continue
      const change = currentChange(site, controller, battery, on)
      const parts = partsOf(change)
      if (parts.length > 1) {
        report({
          subject: controller.id,
          at: at(change[0] ?? controller),
          message: `${controller.id}: on ${battery.fitted} it was given ${parts.map(setText).join(' and ')}, a mixed set.`,
          fix: 'Fit one set of one kind and make, bought together.'
        })
        continue
      }
      const held = parts[0] ?? battery
      const wanted = wantedOf(controller, held)
      if (!wanted) continue
      report({
        subject: controller.id,
        at: change[0] ? at(change[0], 'kind') : at(controller, 'battery', 'kind'),
        message: `${controller.id}: it holds ${setText(held)}; its sheet says ${setText(wanted)}.`,
        fix: `Fit ${setText(wanted)}, or name the product sheet of the unit that is there.`,
        values: { count: held.count, sheet_count: wanted.count },
        related: controller.sheet ? [{ at: at(controller.sheet, 'battery'), note: 'the cells of the sheet' }] : []
      })
    }
  }
}

type Cells = Pick<BatteryPlan, 'kind' | 'count'>

/** What the sheet asks for, where that is not what is held. */
function wantedOf({ sheet }: Controller, held: Cells): Cells | undefined {
  const { kind = held.kind, count = held.count } = sheet?.battery ?? {}
  const sameKind = sameBattery(kind, held.kind) || saysLess(held.kind, kind)
  return sameKind && count === held.count ? undefined : { kind, count }
}

/** "9 V" beside "9 V alkaline" says less, and nothing else. */
function saysLess(held: string, kind: string): boolean {
  const bare = (text: string) => text.toLowerCase().replaceAll(/\s+/gu, '')
  return bare(kind).startsWith(bare(held))
}

/** The lines of the visits that put in the set that is there now; none where the site file's own is the latest. */
function currentChange(
  site: Site,
  controller: Controller,
  { fitted }: BatteryPlan,
  on: IsoDate
): readonly VisitBattery[] {
  if (fitted === undefined || controller.battery?.fitted === fitted) return []
  const lines = site.visits.filter(visit => visit.on <= on).flatMap(visit => visit.batteries)
  return sortedBy(
    lines.filter(one => one.controller === controller.id && one.fitted === fitted && one.kind !== undefined),
    one => one.at.file
  )
}

/** The lines of one change by kind; lines of one kind are one set. */
function partsOf(change: readonly VisitBattery[]): readonly Cells[] {
  const kinds = change.map(one => one.kind ?? '')
  const first = (kind: string) => kinds.find(one => sameBattery(one, kind)) ?? kind
  return [...groupBy(change, one => first(one.kind ?? ''))].map(([kind, lines]) => ({
    kind,
    count: sum(lines.map(one => one.count ?? 1))
  }))
}
