import { overlaps } from '../../domain/schedule/overlaps.ts'
import { sortedBy } from '../../base/collections.ts'
import { fromEpochDay } from '../../units/date.ts'
import { showClock } from '../../units/clock.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { minutesText } from './hours.ts'

export const startsOverlap: SiteCheck = {
  card: {
    code: 'schedule/starts-overlap',
    severity: 'error',
    looksAt: 'Start times of one controller that come while an earlier start is still running.',
    why: 'What then happens differs from unit to unit: the second start may be dropped, queued, or open a second valve.',
    sources: ['project-rule'],
    fix: 'Move the later start past the end of the earlier one, or shorten the runs.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00", "01:30"], stations: { 1: 20 min, 2: 20 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00", "01:40"], stations: { 1: 20 min, 2: 20 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const met = overlaps(plan.schedules.get(controller.id)?.days ?? [])
      const [worst, ...others] = sortedBy(met, one => -one.minutesOver)
      if (!worst) continue
      const clock = (seconds: number) => showClock(seconds / 60, site.units)
      const program = controller.programs.find(one => one.id === worst.nextProgram)
      const which =
        worst.program === worst.nextProgram
          ? `program ${worst.program}`
          : `programs ${worst.program} and ${worst.nextProgram}`
      const more =
        others.length === 0
          ? ''
          : ` ${others.length} more ${others.length === 1 ? 'pair of starts meets' : 'pairs of starts meet'}.`
      report({
        subject: controller.id,
        at: program ? at(program, 'starts') : at(controller, 'programs'),
        message:
          `${controller.id}, ${which}: the start at ${clock(worst.startS)} runs until ${clock(worst.endS)}, ` +
          `${minutesText(worst.minutesOver)} past the start at ${clock(worst.nextStartS)} (first on ${fromEpochDay(worst.firstDay)}).${more}`,
        fix: `Start the second at ${clock(Math.ceil(worst.endS / 60) * 60)} or later, or shorten the runs by ${Math.ceil(worst.minutesOver - 1e-6)}\u00a0min in all.`,
        values: { minutes_over: worst.minutesOver, first_on: fromEpochDay(worst.firstDay) }
      })
    }
  }
}
