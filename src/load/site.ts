import { sortedBy } from '../base/collections.ts'
import type { At, Place } from '../diagnostics/finding.ts'
import type { Visit } from '../model/site.ts'
import { companionsOf } from './companions.ts'
import { duplicateIds } from './cross/duplicates.ts'
import { missingFiles } from './cross/paths.ts'
import { lostReferences, namesOf } from './cross/references.ts'
import { fatalFault, sortFaults } from './faults/fault.ts'
import { readPlanFile } from './plan-file.ts'
import { readFrontMatter } from './front-matter.ts'
import type { FrontMatter } from './front-matter.ts'
import { placeOfLine } from './lines.ts'
import type { Fault, LoadedSite, SourceText } from './loaded.ts'
import { makeSite } from './make-site.ts'
import { placeOf } from './place.ts'
import { proseOf } from './prose.ts'
import { readAs } from './read-as.ts'
import { site as siteSchema } from './schema/site.ts'
import { readWeather } from './weather.ts'
import { makeVisit, visit as visitSchema } from './schema/visit.ts'

export interface SiteSources {
  readonly id: string
  /** site.md and the files of visits/, in any order. */
  readonly files: readonly SourceText[]
  /** Tables of the site's own folder, CSV: a record of weather. */
  readonly tables?: readonly SourceText[]
  /** Drawings of the site's own folder, GeoJSON. */
  readonly plans?: readonly SourceText[]
  /** Names of the other files of the folder, by path below it. */
  readonly others?: readonly string[]
  /** Everything below sites/_shared/. */
  readonly shared: readonly SourceText[]
}

/** A site as its files say it, with every fault of all of them at once. Never throws, whatever the files hold. */
export function loadSite({ id, files, tables = [], plans = [], shared, others = [] }: SiteSources): LoadedSite {
  const source = files.find(one => /(?:^|\/)site\.md$/u.test(one.file))
  if (!source) return withoutFile(id, files, others)
  const front = readFrontMatter(source)
  const visits = sortedBy(
    files.filter(one => one !== source),
    one => one.file
  ).map(one => readFrontMatter(one))
  const site = readAs(siteSchema, front)
  const visited = visits.map(one => readAs(visitSchema, one))
  const companions = companionsOf(front, shared)
  const weather = readWeather([front, ...companions.climateFronts], [...tables, ...shared])
  const plan = readPlanFile(front, site.value, plans)
  const names = namesOf(front)
  const faults = sortFaults([
    ...site.faults,
    ...visited.flatMap(one => one.faults),
    ...companions.faults,
    ...weather.faults,
    ...plan.faults,
    ...duplicateIds(front),
    ...whereListsAreRead(lostReferences(front, front.sound ? visits : [], names), site.faults),
    ...missingFiles(front, shared)
  ])
  const fronts = [front, ...visits, ...companions.fronts]
  const locate = locatorOf(fronts)
  if (site.value === undefined || faults.some(fault => fault.fatal)) return { id, faults, locate }
  const made = visited.flatMap(({ value }, index) => (value ? [makeVisit(value, topOf(visits[index] ?? front))] : []))
  return {
    id,
    faults,
    locate,
    site: makeSite(id, site.value, front, {
      ...companions,
      weather: weather.weather,
      planFile: plan.plan,
      fronts,
      visits: inOrder(made)
    })
  }
}

const LIST_OF: Readonly<Record<string, string>> = {
  box: 'boxes',
  controller: 'controllers',
  supply: 'supplies',
  station: 'stations',
  zone: 'stations'
}

/** A list that is not read as it is written, since its key has a slip in it or stands twice, makes all names of its kind seem lost: that is not told beside it. */
function whereListsAreRead(lost: readonly Fault[], faults: readonly Fault[]): Fault[] {
  const keys = faults.flatMap(({ code, details }) =>
    code === 'file/unknown-key' ? [details['nearest']] : code === 'file/duplicate-key' ? [details['key']] : []
  )
  return lost.filter(({ details }) => !keys.includes('id') && !keys.includes(LIST_OF[String(details['kind'])] ?? ''))
}

function topOf(front: FrontMatter): At {
  return { file: front.lines.file, path: [] }
}

/** By day, then by file: two visits on one day keep one order. */
function inOrder(visits: readonly Visit[]): Visit[] {
  return sortedBy(
    visits,
    one => one.on,
    one => one.at.file
  )
}

function locatorOf(fronts: readonly FrontMatter[]): (at: At) => Place {
  const byFile = new Map(fronts.map(front => [front.lines.file, front]))
  return ({ file, path }) => {
    const front = byFile.get(file)
    // A line of the register stands at its number; its text is not at hand here.
    if (!front) return { file, line: typeof path[0] === 'number' ? path[0] : 1, column: 1, length: 0, text: '' }
    if (path[0] === 'prose') return placeOfLine(front.lines, proseOf(front)[Number(path[1])]?.line ?? front.bodyLine)
    return placeOf(front, path)
  }
}

/** A site file under a name that is not read: Site.md, site.md.txt, site.docx. */
const LIKE_SITE_FILE = /^site(?:\.(?:md|txt|markdown|text|docx?|odt|rtf))*$/iu

function withoutFile(id: string, files: readonly SourceText[], others: readonly string[]): LoadedSite {
  const file = `sites/${id}/site.md`
  const place: Place = { file, line: 1, column: 1, length: 0, text: '' }
  const faults: Fault[] = [
    fatalFault('file/front-matter', '', place, {
      kind: 'no-file',
      files: files.map(one => one.file).sort(),
      instead: others.find(one => LIKE_SITE_FILE.test(one)) ?? ''
    })
  ]
  return { id, faults, locate: at => ({ ...place, file: at.file }) }
}
