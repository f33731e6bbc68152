import { groupBy } from '../../base/collections.ts'
import type { FrontMatter } from '../front-matter.ts'
import { fatalFault, mildFault } from '../faults/fault.ts'
import { subjectOf } from '../faults/subject.ts'
import { isSameWord } from '../improve/nearest.ts'
import type { Fault } from '../loaded.ts'
import { placeOf } from '../place.ts'
import { nameAt, recordsOf } from './records.ts'
import type { Names, Pointing } from './references.ts'

/** Where things of a kind are described, and under which key their name stands. */
const DESCRIBED = {
  box: ['boxes', 'id'],
  controller: ['controllers', 'id'],
  supply: ['supplies', 'id'],
  zone: ['stations', 'zone']
} as const

/** A name that is odd where it is described, and the references that are lost for that alone. */
export interface OddName {
  readonly fault: Fault
  readonly explains: (one: Pointing) => boolean
}

const MOST_SEEN = 5

/**
 * "VB 2" under boxes, and VB2 wherever else it is named: where two places or more write a name alike, none writes it as the description does, and
 * the two differ in blanks, hyphens or capitals alone, the description is told of, once.
 */
export function oddNames(site: FrontMatter, pointing: readonly Pointing[], names: Names): OddName[] {
  return Object.entries(DESCRIBED).flatMap(([kind, [list, key]]) => {
    const ofKind = pointing.filter(one => one.reference.kind === kind)
    const used = groupBy(ofKind, one => one.reference.name)
    return recordsOf(site.data, list).flatMap(record => {
      const described = nameAt(record, key)
      if (described === undefined || used.has(described)) return []
      const alike = [...used].filter(([name]) => isSameWord(name, described))
      const [name, places] = alike[0] ?? ['', []]
      if (alike.length !== 1 || places.length < 2 || names[kind as keyof Names].includes(name)) return []
      return [oddName(site, [...record.path, key], { kind, described, name, places })]
    })
  })
}

interface Odd {
  readonly kind: string
  readonly described: string
  readonly name: string
  readonly places: readonly Pointing[]
}

function oddName(
  site: FrontMatter,
  path: readonly (string | number)[],
  { kind, described, name, places }: Odd
): OddName {
  const make = places.some(one => one.reference.fatal === true) ? fatalFault : mildFault
  const details = { kind, described, name, key: String(path.at(-1)), places: places.length }
  const fault = make('file/dangling-reference', subjectOf(site.data, path), placeOf(site, path), details)
  return {
    fault: {
      ...fault,
      related: places
        .slice(0, MOST_SEEN)
        .map(({ front, reference }) => ({ place: placeOf(front, reference.path), note: `${name} is named here` }))
    },
    // The stations that a program of this controller runs are looked for under its name.
    explains: ({ reference }) =>
      places.some(one => one.reference === reference) ||
      (kind === 'controller' && reference.kind === 'station' && reference.name.startsWith(`${described}/`))
  }
}
