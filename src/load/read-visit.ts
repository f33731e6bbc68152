import type { At, Place } from '../diagnostics/finding.ts'
import type { Visit } from '../model/site.ts'
import { lostInVisit, namesOf } from './cross/references.ts'
import { fatalFault } from './faults/fault.ts'
import { readFrontMatter } from './front-matter.ts'
import type { Fault, SourceText } from './loaded.ts'
import { oneLine } from './one-line.ts'
import { placeOf } from './place.ts'
import { readAs } from './read-as.ts'
import { makeVisit, visit as visitSchema } from './schema/visit.ts'
import type { VisitData } from './write-visit.ts'

export interface ReadVisit {
  readonly data: VisitData
  /** Undefined where the text cannot be taken; the faults say why. */
  readonly visit?: Visit
  readonly faults: readonly Fault[]
  readonly locate: (path: At['path']) => Place
}

/** Far more than a person writes on a slip; a box page must stay small. */
export const MOST_LETTERS = 500
export const MOST_ENTRIES = 80

/** A visit as its text says it, held against the site: names that lead nowhere are faults here, since they can still be mended. */
export function readVisit(source: SourceText, siteFile: SourceText): ReadVisit {
  const front = readFrontMatter(source)
  const data = cleaned(front.data) as VisitData
  const { value, faults } = readAs(visitSchema, { ...front, data })
  const names = namesOf(readFrontMatter(siteFile))
  const found = front.sound ? lostInVisit(front, names) : []
  const locate = (path: At['path']) => placeOf(front, path)
  const all = [...faults, ...found, ...tooMuch(data, locate)]
  return {
    data,
    faults: all,
    locate,
    ...(value !== undefined && all.length === 0 ? { visit: makeVisit(value, { file: source.file, path: [] }) } : {})
  }
}

/** Each text on one line; an empty one is not there. */
function cleaned(value: unknown): unknown {
  if (typeof value === 'string') return oneLine(value)
  if (Array.isArray(value)) return value.map(cleaned).filter(one => one !== '')
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).map(([key, inner]) => [key, cleaned(inner)] as const)
  return Object.fromEntries(entries.filter(([, inner]) => inner !== ''))
}

function tooMuch(data: VisitData, locate: ReadVisit['locate']): Fault[] {
  return Object.entries(data).flatMap(([key, value]) => {
    const entries: unknown[] = Array.isArray(value) ? value : [value]
    const place = (index: number) => locate(Array.isArray(value) ? [key, index] : [key])
    if (entries.length > MOST_ENTRIES) {
      const range = `must have at most ${MOST_ENTRIES} entries`
      const details = { key, written: `${entries.length} entries`, range, example: `the ${MOST_ENTRIES} that matter` }
      return [fatalFault('file/out-of-range', key, locate([key]), details)]
    }
    return entries.flatMap((entry, index) => {
      const written = typeof entry === 'string' ? entry : JSON.stringify(entry ?? '')
      if (written.length <= MOST_LETTERS) return []
      const range = `has ${written.length} characters; ${MOST_LETTERS} are the most`
      const details = { key, written: `${written.slice(0, 24)}…`, range, example: 'a sentence or two' }
      return [fatalFault('file/out-of-range', key, place(index), details)]
    })
  })
}
