import type { Site } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'

/** Something that a visit left open and no later one has repaired. */
export interface OpenJob {
  readonly text: string
  /** The first visit that left it open. */
  readonly since: IsoDate
  readonly owner?: string
}

/**
 * What visits up to `on` left open, oldest first. A job that several visits name in the same words stands once, since the first; what a
 * visit repairs is closed, and opens anew where the same or a later visit names it again.
 */
export function openJobs({ visits }: Pick<Site, 'visits'>, on: IsoDate): OpenJob[] {
  const jobs = new Map<string, OpenJob>()
  for (const visit of visits.filter(one => one.on <= on)) {
    for (const text of visit.repaired ?? []) jobs.delete(jobKey(text))
    for (const text of visit.open) {
      const owner = visit.owner ?? jobs.get(jobKey(text))?.owner
      const since = jobs.get(jobKey(text))?.since ?? visit.on
      jobs.set(jobKey(text), { text, since, ...(owner === undefined ? {} : { owner }) })
    }
  }
  return [...jobs.values()]
}

/** Two people write one job with other capitals and spaces. */
export function jobKey(text: string): string {
  return text.normalize('NFC').replace(/\s+/gu, ' ').trim().toLowerCase()
}
