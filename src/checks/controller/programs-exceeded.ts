import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const programsExceeded: SiteCheck = {
  card: {
    code: 'controller/programs-exceeded',
    severity: 'error',
    looksAt: 'The programs of a controller, against how many it holds.',
    why: 'A program past the last one cannot be keyed in.',
    sources: ['product-sheet'],
    fix: 'Join programs, or name the product sheet of the controller that is really there.',
    worked: {
      example: `controllers:
  - id: K1
    box: VB1
    sheet: _shared/sheets/plain.md
    programs:
      - { id: A, days: every day, starts: ["01:00"], stations: { 1: 5 min } }
      - { id: B, days: every day, starts: ["02:00"], stations: { 1: 5 min } }
      - { id: C, days: every day, starts: ["03:00"], stations: { 1: 5 min } }
      - { id: D, days: every day, starts: ["04:00"], stations: { 1: 5 min } }`,
      instead: `controllers:
  - id: K1
    box: VB1
    sheet: _shared/sheets/plain.md
    programs:
      - { id: A, days: every day, starts: ["01:00"], stations: { 1: 5 min } }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of site.controllers) {
      const most = controller.sheet?.programs
      const extra = most === undefined ? undefined : controller.programs[most]
      if (most === undefined || !extra) continue
      report({
        subject: controller.id,
        at: at(extra, 'id'),
        message: `${controller.id} holds ${most} programs; ${controller.programs.length} are written.`,
        fix: `Keep ${most}; stations with the same days can share one.`,
        values: { programs: controller.programs.length, limit: most }
      })
    }
  }
}
