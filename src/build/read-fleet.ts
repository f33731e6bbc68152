import { existsSync, lstatSync, readFileSync, readdirSync, statSync } from 'node:fs'
import type { Dirent, Stats } from 'node:fs'
import { isAbsolute, join, relative, resolve, sep } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import type { ReadTrouble, SourceText } from '../load/loaded.ts'
import { MARKER } from './output-marker.ts'

export interface SiteSources {
  /** Name of the folder. */
  readonly id: string
  /** Folder as messages print it. */
  readonly folder: string
  /** Undefined where there is no site.md. */
  readonly site?: SourceText
  /** By file name, which starts with the day. */
  readonly visits: readonly SourceText[]
  /** Tables of the folder itself, *.csv: a record of weather. */
  readonly tables?: readonly SourceText[]
  /** Drawings of the folder itself, *.geojson. */
  readonly plans?: readonly SourceText[]
  /** Everything else in the folder, by path below it: photographs, drawings, reports. */
  readonly others: readonly string[]
}

export interface FleetSources {
  /** As messages print it. */
  readonly folder: string
  readonly sites: readonly SiteSources[]
  /** Texts below _shared/. */
  readonly shared: readonly SourceText[]
  /** Other files below _shared/, by path below it. */
  readonly sharedOthers: readonly string[]
  /** tags.csv, where there is one. */
  readonly register?: SourceText
}

const TEXTS = /\.(?:md|csv|ya?ml|txt)$/iu
const SHARED = '_shared'
const REGISTER = 'tags.csv'

/**
 * Reads a folder of sites into texts, in the order of their names by code unit, so that no locale changes it. Names that start with a
 * dot are passed over. Texts are as they stand on disk, byte-order mark and line ends included; one that cannot be read says why.
 */
export function readFleet(folder: string): FleetSources {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new Refusal(
      `There is no folder ${folder}.`,
      'Name the folder of your sites with --sites, or start one: underlid new my-site'
    )
  const root = shown(folder)

  const sites = foldersIn(folder).filter(id => id !== SHARED && !existsSync(join(folder, id, MARKER)))
  const shared = filesBelow(join(folder, SHARED)).map(path => `${SHARED}/${path}`)
  const register = isThere(join(folder, REGISTER)) ? readText(`${root}/${REGISTER}`) : undefined
  return {
    folder: root,
    sites: sites.map(id => readSite(folder, root, id)),
    shared: shared.filter(path => TEXTS.test(path)).map(path => readText(`${root}/${path}`)),
    sharedOthers: shared.filter(path => !TEXTS.test(path)).map(path => path.slice(SHARED.length + 1)),
    ...(register ? { register } : {})
  }
}

/** One site as `readFleet` reads it; undefined where its folder is gone. */
export function readOneSite(folder: string, id: string): SiteSources | undefined {
  return foldersIn(folder).includes(id) ? readSite(folder, shown(folder), id) : undefined
}

function readSite(folder: string, root: string, id: string): SiteSources {
  const files = filesBelow(join(folder, id))
  const isVisit = (path: string): boolean => /^visits\/[^/]+\.md$/u.test(path)
  const texts = (paths: readonly string[]): SourceText[] => paths.map(path => readText(`${root}/${id}/${path}`))
  const site = isThere(join(folder, id, 'site.md')) ? readText(`${root}/${id}/site.md`) : undefined
  return {
    id,
    folder: `${root}/${id}`,
    ...(site ? { site } : {}),
    visits: texts([...files, ...lostLinks(join(folder, id), 'visits')].filter(isVisit).sort()),
    tables: texts(files.filter(path => /^[^/]+\.csv$/iu.test(path))),
    plans: texts(files.filter(path => /^[^/]+\.geojson$/iu.test(path))),
    others: files.filter(path => path !== 'site.md' && !isVisit(path))
  }
}

/** From the folder we are in where it lies below, else whole; with forward slashes, as messages print it. */
function shown(folder: string): string {
  const path = relative(process.cwd(), resolve(folder))
  const outside = path === '..' || path.startsWith(`..${sep}`) || isAbsolute(path)
  return (outside ? folder : path || '.')
    .split(sep)
    .join('/')
    .replace(/(?<=.)\/$/u, '')
}

function readText(file: string): SourceText {
  try {
    return { file, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file)) }
  } catch (error) {
    return { file, text: '', trouble: troubleOf(error) }
  }
}

const TROUBLES: Readonly<Record<string, ReadTrouble>> = {
  ERR_ENCODING_INVALID_ENCODED_DATA: 'encoding',
  EACCES: 'right',
  EPERM: 'right',
  ELOOP: 'link',
  ENOENT: 'link',
  EISDIR: 'no-file',
  ENOTDIR: 'no-file'
}

function troubleOf(error: unknown): ReadTrouble {
  return TROUBLES[(error as NodeJS.ErrnoException).code ?? ''] ?? 'disk'
}

/** True for whatever has the name, also a link that leads nowhere. */
const isThere = (path: string): boolean => lstatSync(path, { throwIfNoEntry: false }) !== undefined

/** What stands at the end of all links; undefined where that is nothing, a ring, or behind a locked door. */
function standing(path: string): Stats | undefined {
  try {
    return statSync(path)
  } catch {
    return undefined
  }
}

function foldersIn(folder: string): string[] {
  return readdirSync(folder)
    .filter(name => !name.startsWith('.') && name !== REGISTER && standing(join(folder, name))?.isDirectory())
    .sort()
}

/** Paths below a folder with forward slashes, sorted. A folder behind a link is not entered, so that no ring of links traps us. */
function filesBelow(folder: string): string[] {
  const walk = (below: string): string[] =>
    entriesOf(join(folder, below))
      .filter(entry => !entry.name.startsWith('.'))
      .flatMap(entry => {
        const path = below === '' ? entry.name : `${below}/${entry.name}`
        if (entry.isDirectory()) return walk(path)
        return entry.isFile() || standing(join(folder, path))?.isFile() ? [path] : []
      })
  return walk('').sort()
}

/** Links that lead nowhere: a visit behind one is told of, not passed over. */
function lostLinks(folder: string, below: string): string[] {
  return entriesOf(join(folder, below))
    .filter(entry => entry.isSymbolicLink() && !standing(join(folder, below, entry.name)))
    .map(entry => `${below}/${entry.name}`)
}

/** Nothing where there is no folder, or one that may not be opened: what it should hold is then told as missing. */
function entriesOf(folder: string): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
  } catch {
    return []
  }
}
