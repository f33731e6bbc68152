import { isPresent } from '../../base/absent.ts'
import { daysBetween } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { becauseText, daysText, setText } from './set-text.ts'

export const batteryDueSoon: SiteCheck = {
  card: {
    code: 'power/battery-due-soon',
    severity: 'note',
    looksAt: 'A battery that is due within 60 days.',
    why: 'A battery that dies with a valve open leaves it open, so the change belongs on the next route.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Put the change on the next route.',
    worked: {
      on: '2026-05-01',
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2025-06-18, interval: 12 months } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2025-09-18, interval: 12 months } }`
    }
  },
  run: ({ site, plan, on }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || battery.state !== 'due-soon' || !isPresent(battery.dueOn)) continue
      const days = daysBetween(on, battery.dueOn)
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'fitted'),
        message: `${controller.id}: the battery is due ${battery.dueOn}, ${days === 0 ? 'today' : `in ${daysText(days)}`} (${becauseText(battery)}).`,
        fix: `Take ${setText(battery)} on the next route.`,
        values: { days_left: days, due_on: battery.dueOn, count: battery.count }
      })
    }
  }
}
