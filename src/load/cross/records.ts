import { stationParts } from '../schema/station.ts'
import { valueAt } from '../faults/subject.ts'

type Path = readonly (string | number)[]

/** A record as it stands in the keys, before anything is known to be right about it. */
export interface RawRecord {
  readonly raw: unknown
  readonly path: Path
}

/** The records of a list, wherever a list stands; nothing where something else does. */
export function recordsOf(data: unknown, ...path: Path): RawRecord[] {
  const list = valueAt(data, path)
  return Array.isArray(list) ? list.map((raw: unknown, index) => ({ raw, path: [...path, index] })) : []
}

/** The text at a key of a record: an id, or a reference to one. */
export function nameAt({ raw }: RawRecord, ...keys: Path): string | undefined {
  const value = valueAt(raw, keys)
  return typeof value === 'string' ? value.trim() : undefined
}

/** A station by controller and number, so that "K1/03" and "K1/3" are one. */
export function stationName(id: string): string {
  const parts = stationParts(id)
  return parts ? `${parts[0]}/${parts[1]}` : id
}
