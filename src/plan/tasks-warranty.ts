import type { Site, Warranty } from '../model/site.ts'
import { addDays, addInterval } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { SiteTask } from './tasks.ts'

/** A visit under the warranty counts for an inspection from so many days before it (rule of this project). */
const EARLY_DAYS = 45

/**
 * Ends of warranties that are still running, and their inspections that no visit has done. An end that nobody supplied has no date; one that
 * is past calls for nothing. A planned site is not under warranty yet.
 */
export function warrantyTasks(site: Site, on: IsoDate): SiteTask[] {
  if (site.status === 'planned') return []
  return site.warranties.flatMap(one => [...endOf(one, on), ...inspectionsOf(site, one, on)])
}

function endOf({ item, end }: Warranty, on: IsoDate): SiteTask[] {
  if (end === undefined) return [{ kind: 'warranty-end', subject: item }]
  return end < on ? [] : [{ kind: 'warranty-end', subject: item, dueOn: end }]
}

function inspectionsOf({ visits }: Site, { item, start, end, inspections = [] }: Warranty, on: IsoDate): SiteTask[] {
  if (end !== undefined && end < on) return []
  if (start === undefined) return inspections.length > 0 ? [{ kind: 'warranty-inspection', subject: item }] : []
  return inspections.flatMap<SiteTask>(interval => {
    const dueOn = addInterval(start, interval)
    const done = visits.some(
      visit =>
        visit.on >= addDays(dueOn, -EARLY_DAYS) &&
        visit.on <= on &&
        [visit.reason ?? '', ...(visit.tasks ?? [])].some(words => /\bwarranty\b/iu.test(words))
    )
    return done ? [] : [{ kind: 'warranty-inspection', task: interval.text, subject: item, dueOn }]
  })
}
