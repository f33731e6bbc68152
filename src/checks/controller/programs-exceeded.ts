import type { Program } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

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
    for (const controller of controllersInService(site)) {
      const most = controller.sheet?.programs
      const together = mostTogether(controller.programs)
      const extra = most === undefined ? undefined : together[most]
      if (most === undefined || !extra) continue
      report({
        subject: controller.id,
        at: at(extra, 'id'),
        message: `${controller.id} holds ${most} ${most === 1 ? 'program' : 'programs'}; ${together.length} are written for the same days.`,
        fix: `Keep ${most}. Stations that water on the same days can share one program.`,
        values: { programs: together.length, limit: most },
        related: controller.sheet ? [{ at: at(controller.sheet, 'programs'), note: 'how many it holds' }] : []
      })
    }
  }
}

/** The programs in force on the day with most of them: a program whose dates are over makes room for the next. */
function mostTogether(programs: readonly Program[]): readonly Program[] {
  const starts = programs.map(one => one.from ?? '')
  const days = starts.map(day => programs.filter(one => (one.from ?? '') <= day && day <= (one.to ?? '9999')))
  return days.reduce((most, one) => (one.length > most.length ? one : most), [])
}
