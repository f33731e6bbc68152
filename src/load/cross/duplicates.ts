import { groupBy } from '../../base/collections.ts'
import type { Fault } from '../loaded.ts'
import { mildFault } from '../faults/fault.ts'
import type { FrontMatter } from '../front-matter.ts'
import { placeOf } from '../place.ts'
import { subjectOf } from '../faults/subject.ts'
import { nameAt, recordsOf, stationName } from './records.ts'
import type { RawRecord } from './records.ts'

/** What stands in each list, in a sentence. */
const LISTS = {
  supplies: 'supplies',
  boxes: 'boxes',
  controllers: 'controllers',
  stations: 'stations',
  sensors: 'sensors',
  keys: 'keys'
} as const

/** Ids that stand twice in one list, and programs that do in one controller. A box and a controller may share a name. */
export function duplicateIds(front: FrontMatter): Fault[] {
  const lists = Object.entries(LISTS).flatMap(([list, kind]) => twice(front, recordsOf(front.data, list), kind))
  const programs = recordsOf(front.data, 'controllers').flatMap(({ raw, path }) =>
    twice(front, under(recordsOf(raw, 'programs'), path), 'programs')
  )
  return [...lists, ...programs]
}

function twice(front: FrontMatter, records: readonly RawRecord[], kind: string): Fault[] {
  const named = records.filter(one => nameAt(one, 'id') !== undefined)
  const groups = groupBy(named, one => stationName(nameAt(one, 'id') ?? ''))
  return [...groups].flatMap(([id, [first, ...others]]) =>
    first
      ? others.filter(one => !isOutputClaimed(kind, first, one)).map(one => duplicate(front, first, one, id, kind))
      : []
  )
}

/** Two zones, both in use, that claim one output: that is told by `controller/station-shared`, which knows what it means. */
function isOutputClaimed(kind: string, first: RawRecord, other: RawRecord): boolean {
  const [zone, rival] = [nameAt(first, 'zone'), nameAt(other, 'zone')]
  const inUse = [first, other].every(one => nameAt(one, 'out-of-service') === undefined)
  return kind === 'stations' && inUse && zone !== undefined && rival !== undefined && zone !== rival
}

function duplicate(front: FrontMatter, first: RawRecord, other: RawRecord, id: string, kind: string): Fault {
  const place = placeOf(front, [...other.path, 'id'])
  const firstPlace = placeOf(front, [...first.path, 'id'])
  const subject = subjectOf(front.data, other.path)
  return {
    ...mildFault('file/duplicate-id', subject === '' ? id : subject, place, { id, kind, firstLine: firstPlace.line }),
    related: [{ place: firstPlace, note: `${id} stands here first` }]
  }
}

function under(records: readonly RawRecord[], path: RawRecord['path']): RawRecord[] {
  return records.map(one => ({ raw: one.raw, path: [...path, ...one.path] }))
}
