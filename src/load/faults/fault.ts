import { sortedBy } from '../../base/collections.ts'
import type { Place } from '../../diagnostics/finding.ts'
import type { Fault } from '../loaded.ts'

export type Details = Fault['details']

/** A fault without which the site can still be understood (decided for the project: duplicate ids, references to nothing). */
export function mildFault(code: string, subject: string, place: Place, details: Details): Fault {
  return { code, subject, place, details, fatal: false }
}

/** A fault that stops the site: what was meant cannot be known. */
export function fatalFault(code: string, subject: string, place: Place, details: Details): Fault {
  return { code, subject, place, details, fatal: true }
}

/** By file, line, column and code; the order in which files were read does not show. The same fault at the same place stands once. */
export function sortFaults(faults: Iterable<Fault>): Fault[] {
  const sorted = sortedBy(
    faults,
    fault => fault.place.file,
    fault => fault.place.line,
    fault => fault.place.column,
    fault => fault.code,
    fault => JSON.stringify(fault.details)
  )
  return sorted.filter((fault, index) => index === 0 || JSON.stringify(fault) !== JSON.stringify(sorted[index - 1]))
}
