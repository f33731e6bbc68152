import { fromEpochDay } from '../../units/date.ts'
import type { EpochDay } from '../../units/date.ts'
import type { DayPattern, YearRuns } from '../../domain/schedule/year-runs.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const startsADayExceeded: SiteCheck = {
  card: {
    code: 'controller/starts-a-day-exceeded',
    severity: 'error',
    looksAt:
      'The starts of all programs on the fullest day of the year, against how many the controller makes in a day.',
    why: 'The starts past the last one are not made, so that what they water stays dry on those days.',
    sources: ['product-sheet'],
    fix: 'Leave out starts, or put programs on different days.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/three-a-day.md, programs: [{ id: A, days: every day, starts: ["01:00", "02:00"], stations: { 1: 5 min } }, { id: B, days: every day, starts: ["03:00", "04:00"], stations: { 2: 5 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/three-a-day.md, programs: [{ id: A, days: every day, starts: ["01:00", "02:00"], stations: { 1: 5 min } }, { id: B, days: every day, starts: ["03:00"], stations: { 2: 5 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of controllersInService(site)) {
      const { id, sheet } = controller
      const most = sheet?.startsPerDay
      if (!sheet || most === undefined) continue
      const { starts, day, times } = fullestDay(plan.schedules.get(id)?.days ?? [])
      if (starts <= most) continue
      const more = times === 1 ? '' : `, the first of ${times} days with as many`
      report({
        subject: id,
        at: at(controller, 'programs'),
        message: `${id}: ${starts} starts on ${fromEpochDay(day)}${more}; the controller makes ${most} a day.`,
        fix: `Leave out ${starts - most} of them on such a day, or put a program on other days.`,
        values: { starts, limit: most },
        related: [{ at: at(sheet, 'starts-a-day'), note: 'how many it makes' }]
      })
    }
  }
}

function fullestDay(days: YearRuns): { readonly starts: number; readonly day: EpochDay; readonly times: number } {
  const known = new Map<DayPattern, number>()
  let fullest = { starts: 0, day: 0, times: 0 }
  for (const { day, pattern } of days) {
    const starts = known.get(pattern) ?? startsOf(pattern)
    known.set(pattern, starts)
    if (starts > fullest.starts) fullest = { starts, day, times: 1 }
    else if (starts === fullest.starts) fullest = { ...fullest, times: fullest.times + 1 }
  }
  return fullest
}

const startsOf = (pattern: DayPattern): number =>
  new Set(pattern.map(one => `${one.program} ${one.programStartS}`)).size
