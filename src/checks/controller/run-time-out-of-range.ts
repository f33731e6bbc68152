import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'
import { asWritten, inSomeMonth } from './run-time-trouble.ts'

export const runTimeOutOfRange: SiteCheck = {
  card: {
    code: 'controller/run-time-out-of-range',
    severity: 'error',
    looksAt:
      'A run time that the controller cannot be set to: shorter or longer than it allows, or between two of its steps.',
    why: 'Whoever keys it in has to round, and nobody knows which way.',
    sources: ['product-sheet'],
    fix: 'Use a run time that the controller can be set to.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 30 s } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 1 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of controllersInService(site)) {
      const { sheet } = controller
      if (!sheet) continue
      const months = plan.schedules.get(controller.id)?.months ?? []
      for (const program of controller.programs) {
        for (const station of program.stations) {
          const row = months.find(one => one.program === program.id && one.station === station.number)
          const trouble = asWritten(station, sheet) ?? (row && inSomeMonth(station, row, sheet))
          if (!trouble) continue
          const inMonth: Record<string, string> = trouble.month === undefined ? {} : { month: trouble.month }
          report({
            subject: controller.id,
            at: at(station),
            message: `${controller.id}, program ${program.id}, station ${station.number}: ${trouble.text}.`,
            fix: trouble.fix,
            ...(trouble.month === undefined ? {} : { severity: 'warning' as const }),
            values: { run_time_min: trouble.seconds / 60, limit_min: trouble.limit.si / 60, ...inMonth },
            related: [{ at: at(sheet, 'run-time'), note: 'what it can be set to' }]
          })
        }
      }
    }
  }
}
