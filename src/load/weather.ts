import type { DailyWeather } from '../model/site.ts'
import { mildFault } from './faults/fault.ts'
import { corrected } from './faults/corrected.ts'
import { valueAt } from './faults/subject.ts'
import type { FrontMatter } from './front-matter.ts'
import { nearest } from './improve/nearest.ts'
import type { Fault, SourceText } from './loaded.ts'
import { placeOf } from './place.ts'
import { findShared, sharedPath } from './shared.ts'
import { loadWeather } from './weather-file.ts'

export interface WeatherRead {
  /** By the path as a climate writes it. */
  readonly weather: ReadonlyMap<string, DailyWeather>
  readonly faults: readonly Fault[]
}

type Path = readonly (string | number)[]

/**
 * The daily records that the climate of a site names, in the site file or in a shared climate file. They lie beside the site file or below
 * sites/_shared/; one of the site goes first.
 */
export function readWeather(fronts: readonly FrontMatter[], files: readonly SourceText[]): WeatherRead {
  const weather = new Map<string, DailyWeather>()
  const faults: Fault[] = []
  for (const front of fronts) {
    for (const path of [['climate', 'daily-weather'], ['daily-weather']] satisfies Path[]) {
      const written = valueAt(front.data, path)
      if (typeof written !== 'string') continue
      const source = findShared(files, written)
      if (!source) {
        faults.push(notThere(front, path, written, files))
        continue
      }
      const { weather: record, faults: found } = loadWeather(source)
      faults.push(...found)
      if (record) weather.set(written.trim(), record)
    }
  }
  return { weather, faults }
}

function notThere(front: FrontMatter, path: Path, written: string, files: readonly SourceText[]): Fault {
  const near = nearest(
    written,
    files.map(one => sharedPath(one.file))
  )
  const details = {
    name: written,
    kind: 'daily record',
    known: [],
    key: 'daily-weather',
    ...(near === undefined ? {} : { nearest: near, corrected: corrected(front, path, near) })
  }
  return mildFault('file/dangling-reference', '', placeOf(front, path), details)
}
