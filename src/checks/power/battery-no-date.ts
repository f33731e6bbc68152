import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const batteryNoDate: SiteCheck = {
  card: {
    code: 'power/battery-no-date',
    severity: 'warning',
    looksAt: 'A battery with no date on which it was fitted.',
    why: 'Nobody can say when it is due, so it counts as due first.',
    sources: ['project-rule'],
    fix: 'Change the battery at the next visit and write down the day.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1 } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-04-01 } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      if (plan.batteries.get(controller.id)?.state !== 'no-date') continue
      report({
        subject: controller.id,
        at: at(controller, 'battery'),
        message: `${controller.id}: no date on which the battery was fitted.`,
        fix: 'Write "fitted: YYYY-MM-DD", or change the battery and record the visit.'
      })
    }
  }
}
