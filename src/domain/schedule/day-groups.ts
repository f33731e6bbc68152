import type { EpochDay } from '../../units/date.ts'
import { numberer } from './numberer.ts'
import { DAY_S } from './run-times.ts'
import { patternEndS } from './year-runs.ts'
import type { DayPattern, YearRuns } from './year-runs.ts'

/** Days on end whose water meets: what opened on one is still open when something opens on the next. Most groups are one day. */
export interface DayGroup {
  readonly firstDay: EpochDay
  /** By day from the first, and in each by calendar: what starts; undefined where nothing does. */
  readonly patterns: readonly (readonly (DayPattern | undefined)[])[]
  /** The same for every group in which the same happens, within one call. */
  readonly key: string
}

type Row = (DayPattern | undefined)[]

/**
 * The days of several calendars, grouped so that no opening of one group meets one of another. What is true of the times within a group
 * needs to be worked out once for each key.
 */
export function dayGroups(calendars: readonly YearRuns[]): DayGroup[] {
  const idOf = numberer<DayPattern>()
  const groups: DayGroup[] = []
  let open: { firstDay: EpochDay; patterns: Row[]; untilS: number } | undefined
  const close = () => {
    if (!open) return
    const { firstDay, patterns } = open
    const key = patterns.map(row => row.map(one => (one ? idOf(one) : '')).join()).join(';')
    groups.push({ firstDay, patterns, key })
  }
  for (const [day, row] of rowsOf(calendars)) {
    const fromS = day * DAY_S + Math.min(...row.map(one => one?.[0]?.startS ?? Infinity))
    const untilS = day * DAY_S + Math.max(...row.map(one => (one ? patternEndS(one) : 0)))
    if (open && fromS < open.untilS) {
      while (open.firstDay + open.patterns.length < day) open.patterns.push([])
      open.patterns.push(row)
      open.untilS = Math.max(open.untilS, untilS)
      continue
    }
    close()
    open = { firstDay: day, patterns: [row], untilS }
  }
  close()
  return groups
}

function rowsOf(calendars: readonly YearRuns[]): [EpochDay, Row][] {
  const rows = new Map<EpochDay, Row>()
  for (const [index, calendar] of calendars.entries())
    for (const { day, pattern } of calendar) {
      const row = rows.get(day) ?? calendars.map(() => undefined)
      rows.set(day, row)
      row[index] = pattern
    }
  return calendars.length === 1 ? [...rows] : [...rows].sort(([a], [b]) => a - b)
}
