import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const startTimesExceeded: SiteCheck = {
  card: {
    code: 'controller/start-times-exceeded',
    severity: 'error',
    looksAt: 'The start times of a program, against how many the controller takes.',
    why: 'The start times past the last one cannot be keyed in, so that watering never happens.',
    sources: ['product-sheet'],
    fix: 'Leave out start times, or use cycles and soak instead of more starts.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00", "02:00", "03:00", "04:00", "05:00"], stations: { 1: 5 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00", "02:00", "03:00", "04:00"], stations: { 1: 5 min } }] }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of controllersInService(site)) {
      const most = controller.sheet?.startsPerProgram
      if (most === undefined) continue
      for (const program of controller.programs.filter(one => one.starts.length > most)) {
        report({
          subject: controller.id,
          at: at(program, 'starts'),
          message: `${controller.id}, program ${program.id}: ${program.starts.length} start times; the controller takes ${most}.`,
          fix: `Keep ${most}, or split a run into cycles with soak instead of starting again.`,
          values: { starts: program.starts.length, limit: most },
          related: controller.sheet ? [{ at: at(controller.sheet, 'starts'), note: 'how many it takes' }] : []
        })
      }
    }
  }
}
