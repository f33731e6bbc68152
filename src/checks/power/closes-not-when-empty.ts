import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const closesNotWhenEmpty: SiteCheck = {
  card: {
    code: 'power/closes-not-when-empty',
    severity: 'note',
    looksAt: 'A controller whose sheet says that it leaves an open valve as it is when the cells run down.',
    why: 'A latching valve needs no power to stay open. With such a unit, cells that die during a run let the water run until somebody comes.',
    sources: ['product-sheet', 'lajara-2011'],
    fix: 'Keep to the due date, and tell whoever answers calls which shut-off stops the water.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/charge.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-03-20 } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-03-20 } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of controllersInService(site)) {
      const { sheet } = controller
      if (sheet?.onLowBattery !== 'stays as it is' || plan.batteries.get(controller.id)?.state === 'none') continue
      report({
        subject: controller.id,
        at: at(controller, 'sheet'),
        message: `${controller.id}: by its sheet an open valve stays open when the cells run down.`,
        fix: 'Change the cells in time, and keep the shut-off of its supply where whoever answers calls can find it.',
        related: [{ at: at(sheet, 'valve-on-low-battery'), note: 'what the sheet says' }]
      })
    }
  }
}
