import type { Fault } from '../loaded.ts'
import { corrected } from '../faults/corrected.ts'
import { fatalFault, mildFault } from '../faults/fault.ts'
import type { Details } from '../faults/fault.ts'
import type { FrontMatter } from '../front-matter.ts'
import { nearest } from '../improve/nearest.ts'
import { placeOf, placeOfKey } from '../place.ts'
import { stationParts } from '../schema/station.ts'
import { subjectOf, valueAt } from '../faults/subject.ts'
import { oddNames } from './odd-names.ts'
import { nameAt, recordsOf, stationName } from './records.ts'

type Path = readonly (string | number)[]

/** A name that ought to stand in one of the lists. */
export interface Reference {
  readonly path: Path
  readonly name: string
  readonly kind: keyof Names
  /** The name is the key of the path, as a station number in a program is. */
  readonly isKey?: boolean
  /** A station without its controller cannot be understood; the others only lack something. */
  readonly fatal?: boolean
}

/** A reference and the file that it stands in. */
export interface Pointing {
  readonly front: FrontMatter
  readonly reference: Reference
}

/** The names that a site gives to its things. */
export interface Names {
  readonly box: readonly string[]
  readonly controller: readonly string[]
  readonly station: readonly string[]
  readonly supply: readonly string[]
  /** By the writer's name for what a station waters, and by the station itself. */
  readonly zone: readonly string[]
}

export function namesOf(front: FrontMatter): Names {
  const ids = (list: string) => recordsOf(front.data, list).flatMap(one => nameAt(one, 'id') ?? [])
  return {
    box: ids('boxes'),
    controller: ids('controllers'),
    station: ids('stations').map(stationName),
    supply: ids('supplies'),
    zone: recordsOf(front.data, 'stations').flatMap(one =>
      [nameAt(one, 'zone') ?? '', stationName(nameAt(one, 'id') ?? '')].filter(name => name !== '')
    )
  }
}

/** References of a site file and of its visits that lead nowhere. */
export function lostReferences(site: FrontMatter, visits: readonly FrontMatter[], names: Names): Fault[] {
  const pointing = [
    ...siteReferences(site).map(reference => ({ front: site, reference })),
    ...visits.flatMap(front => visitReferences(front).map(reference => ({ front, reference })))
  ]
  const odd = oddNames(site, pointing, names)
  const told = pointing.filter(one => !isKnown(one, names) && !odd.some(({ explains }) => explains(one)))
  return [...odd.map(one => one.fault), ...told.map(one => danglingFault(one, names))]
}

/** References of a visit to things that the site file does not have. */
export function lostInVisit(front: FrontMatter, names: Names): Fault[] {
  return visitReferences(front)
    .map(reference => ({ front, reference }))
    .filter(one => !isKnown(one, names))
    .map(one => danglingFault(one, names))
}

function siteReferences(front: FrontMatter): Reference[] {
  return [
    ...recordsOf(front.data, 'controllers').flatMap(({ raw, path }) => [
      ...named(raw, path, ['box'], 'box'),
      ...named(raw, path, ['supply'], 'supply'),
      ...named(raw, path, ['master-valve', 'box'], 'box'),
      ...recordsOf(raw, 'programs').flatMap(program => programStations(raw, program.raw, [...path, ...program.path]))
    ]),
    ...recordsOf(front.data, 'stations').flatMap(({ raw, path }) => [
      ...ownController(raw, path),
      ...named(raw, path, ['valve', 'box'], 'box'),
      ...recordsOf(raw, 'valve').flatMap(valve => named(valve.raw, [...path, ...valve.path], ['box'], 'box')),
      ...recordsOf(raw, 'splices').flatMap(splice => named(splice.raw, [...path, ...splice.path], ['box'], 'box'))
    ]),
    ...specialStations(front),
    ...drawnPlaces(front),
    ...recordsOf(front.data, 'drawing', 'areas').flatMap(({ raw, path }) => named(raw, path, ['zone'], 'zone')),
    ...recordsOf(front.data, 'maintenance').flatMap(({ raw, path }) => named(raw, path, ['box'], 'box')),
    ...recordsOf(front.data, 'sensors').flatMap(({ raw, path }) => [
      ...named(raw, path, ['box'], 'box'),
      ...named(raw, path, ['controller'], 'controller'),
      ...stationList(raw, path)
    ])
  ]
}

function visitReferences(front: FrontMatter): Reference[] {
  return [
    ...namesIn(front.data, 'boxes', 'box'),
    ...recordsOf(front.data, 'batteries').flatMap(({ raw, path }) => named(raw, path, ['controller'], 'controller')),
    ...recordsOf(front.data, 'programs').flatMap(({ raw, path }) => named(raw, path, ['controller'], 'controller')),
    ...recordsOf(front.data, 'tests').flatMap(({ raw, path }) => named(raw, path, ['supply'], 'supply')),
    ...recordsOf(front.data, 'readings').flatMap(({ raw, path }) => [
      ...named(raw, path, ['station'], 'station'),
      ...named(raw, path, ['supply'], 'supply')
    ])
  ]
}

function named(raw: unknown, path: Path, keys: Path, kind: keyof Names): Reference[] {
  const name = nameAt({ raw, path }, ...keys)
  return name === undefined ? [] : [{ path: [...path, ...keys], name, kind }]
}

/** A list of bare names. */
function namesIn(data: Readonly<Record<string, unknown>>, key: string, kind: keyof Names): Reference[] {
  const written: unknown = data[key]
  if (!Array.isArray(written)) return []
  return written.flatMap((name: unknown, index) =>
    typeof name === 'string' ? [{ path: [key, index], name, kind }] : []
  )
}

/** What the places of the drawing are of; things that stand by themselves may have any name. */
const PLACED: Readonly<Record<string, keyof Names>> = {
  box: 'box',
  controller: 'controller',
  'shut-off': 'supply',
  meter: 'supply',
  backflow: 'supply',
  splice: 'station'
}

function drawnPlaces(front: FrontMatter): Reference[] {
  return recordsOf(front.data, 'drawing', 'places').flatMap(({ raw, path }) => {
    const kind = PLACED[nameAt({ raw, path }, 'what') ?? '']
    return kind ? named(raw, path, ['of'], kind) : []
  })
}

/** Stations whose ground counts in full in the water budget. */
function specialStations(front: FrontMatter): Reference[] {
  const path = ['budget', 'special-stations']
  const list = valueAt(front.data, path)
  if (!Array.isArray(list)) return []
  return list.flatMap((name, index) =>
    typeof name === 'string' ? [{ path: [...path, index], name, kind: 'station' as const }] : []
  )
}

/** Stations that a sensor acts on. */
function stationList(raw: unknown, path: Path): Reference[] {
  const list = valueAt(raw, ['stations'])
  if (!Array.isArray(list)) return []
  return list.flatMap((name, index) =>
    typeof name === 'string'
      ? [{ path: [...path, 'stations', index], name: stationName(name), kind: 'station' as const }]
      : []
  )
}

function ownController(raw: unknown, path: Path): Reference[] {
  const parts = stationParts(nameAt({ raw, path }, 'id') ?? '')
  return parts ? [{ path: [...path, 'id'], name: parts[0], kind: 'controller', fatal: true }] : []
}

function programStations(controller: unknown, program: unknown, path: Path): Reference[] {
  const id = nameAt({ raw: controller, path }, 'id')
  const stations = valueAt(program, ['stations'])
  if (id === undefined || typeof stations !== 'object' || stations === null || Array.isArray(stations)) return []
  const numbers = Object.keys(stations).filter(number => /^\d+$/u.test(number))
  return numbers.map(number => ({
    path: [...path, 'stations', number],
    name: `${id}/${number}`,
    kind: 'station',
    isKey: true
  }))
}

function isKnown({ reference: { kind, name } }: Pointing, names: Names): boolean {
  return names[kind].includes(kind === 'station' || kind === 'zone' ? stationName(name) : name)
}

function danglingFault({ front, reference }: Pointing, names: Names): Fault {
  const { path, name, kind, isKey = false, fatal = false } = reference
  const known = names[kind]
  const near = sameDigits(name, nearest(name, known))
  const value = fatal ? `${near}/${stationParts(nameOf(front, path))?.[1]}` : near
  const details: Details = {
    name,
    kind,
    known,
    key: String(path.at(-1)),
    ...(near === undefined ? {} : { nearest: near }),
    ...(near === undefined || value === undefined || isKey ? {} : { corrected: corrected(front, path, value) })
  }
  const place = isKey ? placeOfKey(front, path) : placeOf(front, path)
  const make = fatal ? fatalFault : mildFault
  return make('file/dangling-reference', subjectOf(front.data, path), place, details)
}

function nameOf(front: FrontMatter, path: Path): string {
  return String(valueAt(front.data, path) ?? '')
}

/** VB2 for VB3 is another box, not a slip: a proposal keeps the digits. */
function sameDigits(name: string, near: string | undefined): string | undefined {
  const digits = (text: string) => text.replace(/\D+/gu, ' ').trim()
  return near !== undefined && digits(near) === digits(name) ? near : undefined
}
