import type { At } from '../diagnostics/finding.ts'
import type { Recorded } from '../model/site.ts'

/** The place of one value of a record: `at(station, 'wire', 0, 'length')`. */
export function at(record: Recorded, ...keys: (string | number)[]): At {
  return { file: record.at.file, path: [...record.at.path, ...keys] }
}
