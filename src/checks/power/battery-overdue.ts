import { isPresent } from '../../base/absent.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { becauseText, daysText, setText } from './set-text.ts'

export const batteryOverdue: SiteCheck = {
  card: {
    code: 'power/battery-overdue',
    severity: 'error',
    looksAt: 'The day a battery is due, against today.',
    why: 'A battery that dies with a valve open leaves it open: a latching valve does not spring shut.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Change the battery at the next visit and record it.',
    worked: {
      on: '2026-05-01',
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2025-04-14, interval: 12 months } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2025-09-14, interval: 12 months } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || battery.state !== 'overdue' || !isPresent(battery.dueOn)) continue
      const days = battery.daysOverdue ?? 0
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'fitted'),
        message: `${controller.id}: the battery was due ${battery.dueOn}, ${daysText(days)} ago (${becauseText(battery)}).`,
        fix: `Fit ${setText(battery)}, see every valve open and close, and record the visit.`,
        values: { days_overdue: days, due_on: battery.dueOn, count: battery.count }
      })
    }
  }
}
