import { distance } from 'fastest-levenshtein'
import type { Fault, SourceText } from '../loaded.ts'
import { corrected } from '../faults/corrected.ts'
import { mildFault } from '../faults/fault.ts'
import type { FrontMatter } from '../front-matter.ts'
import { nearest } from '../improve/nearest.ts'
import { placeOf } from '../place.ts'
import { findShared, sharedPath } from '../shared.ts'
import { subjectOf, valueAt } from '../faults/subject.ts'
import { recordsOf } from './records.ts'

type Path = readonly (string | number)[]

/** A shared file that a site file names, and where it names it. */
export interface SharedReference {
  readonly path: Path
  readonly written: string
  readonly kind: 'product sheet' | 'climate' | 'watering rule'
}

export function sharedReferences(front: FrontMatter): SharedReference[] {
  const sheets = recordsOf(front.data, 'controllers').map(({ path }) => ({
    path: [...path, 'sheet'],
    kind: 'product sheet' as const
  }))
  const rules = recordsOf(front.data, 'watering-rules').map(({ path }) => ({ path, kind: 'watering rule' as const }))
  return [...sheets, { path: ['climate'], kind: 'climate' as const }, ...rules].flatMap(({ path, kind }) => {
    const written = valueAt(front.data, path)
    return typeof written === 'string' ? [{ path, kind, written }] : []
  })
}

/** Shared files that are named and not there. */
export function missingFiles(front: FrontMatter, shared: readonly SourceText[]): Fault[] {
  return sharedReferences(front)
    .filter(({ written }) => !findShared(shared, written))
    .map(({ path, written, kind }) => {
      const known = shared.map(source => sharedPath(source.file))
      const near = nearestPath(written, known)
      const details = {
        name: written,
        kind,
        known: [],
        key: String(path.findLast(step => typeof step === 'string')),
        ...(near === undefined ? {} : { nearest: near, corrected: corrected(front, path, near) })
      }
      return mildFault('file/dangling-reference', subjectOf(front.data, path), placeOf(front, path), details)
    })
}

const SLIPS = 2

/** The path that was meant: the same file elsewhere, or a few slips away. */
function nearestPath(written: string, known: readonly string[]): string | undefined {
  const file = (path: string) => path.slice(path.lastIndexOf('/') + 1)
  const plain = written.replaceAll('\\', '/')
  const near = known.find(path => file(path) === file(plain)) ?? nearest(plain, known)
  // "one-station" is not a slip of "four-station": what is proposed must be the same thing.
  return near !== undefined && distance(file(near), file(plain)) <= SLIPS ? near : undefined
}
