/** Work that is done in one go: what is due at one site in one week. */
export interface WeekJob {
  readonly minutes: number
  /** The last week in which it is in time; weeks count from 0, that of the day. Left out: overdue or without a date, so as soon as there is room. */
  readonly dueWeek?: number
}

/** A job may be done so many weeks before the one in which it is due, and no later (rule of this project). */
export const WEEKS_EARLY = 4

/**
 * The week of each job, so that no week holds more than `capacityMin` where that can be: what is due goes into the last week that has room, its own
 * first; then what is late into the first that has. Where none has, it goes to the one with the least in it, and that week is over.
 */
export function levelWeeks(jobs: readonly WeekJob[], capacityMin: number): number[] {
  const loads: number[] = []
  const loadOf = (week: number): number => loads[week] ?? 0
  const fits = (week: number, minutes: number): boolean => loadOf(week) === 0 || loadOf(week) + minutes <= capacityMin
  const weeks = jobs.map(() => 0)
  const put = (index: number, week: number): void => {
    weeks[index] = week
    loads[week] = loadOf(week) + (jobs[index]?.minutes ?? 0)
  }
  const order = [...jobs.entries()]
  const dated = order.flatMap(([index, { minutes, dueWeek }]) =>
    dueWeek === undefined ? [] : [{ index, minutes, dueWeek }]
  )
  for (const { index, minutes, dueWeek } of dated.sort((a, b) => b.dueWeek - a.dueWeek || b.minutes - a.minutes)) {
    const span = Array.from({ length: Math.min(dueWeek, WEEKS_EARLY) + 1 }, (_, early) => dueWeek - early)
    const least = span.reduce((best, week) => (loadOf(week) < loadOf(best) ? week : best))
    put(index, span.find(week => fits(week, minutes)) ?? least)
  }
  for (const [index, { minutes, dueWeek }] of order) {
    if (dueWeek !== undefined) continue
    let week = 0
    while (!fits(week, minutes)) week += 1
    put(index, week)
  }
  return weeks
}
