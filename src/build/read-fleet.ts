import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs'
import { isAbsolute, join, relative, resolve, sep } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import type { SourceText } from '../load/loaded.ts'
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
  /** Files that are no text, with what to do. They are left out above. */
  readonly unreadable: readonly { readonly file: string; readonly reason: string }[]
}

const TEXTS = /\.(?:md|csv|ya?ml|txt)$/iu
const SHARED = '_shared'

/**
 * Reads a folder of sites into texts, in the order of their names by code unit, so that no locale changes it. Names that start with a
 * dot are passed over. Texts are as they stand on disk, byte-order mark and line ends included.
 */
export function readFleet(folder: string): FleetSources {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new Refusal(
      `There is no folder ${folder}.`,
      'Name the folder of your sites with --sites, or start one: underlid new my-site'
    )
  const root = shown(folder)
  const unreadable: { file: string; reason: string }[] = []
  const text = (file: string): SourceText[] => {
    const read = readText(file)
    if (read === undefined) unreadable.push({ file, reason: 'It is not UTF-8 text. Save it as UTF-8.' })
    return read === undefined ? [] : [{ file, text: read }]
  }
  const texts = (files: readonly string[]): SourceText[] => files.flatMap(text)

  const sites = foldersIn(folder).filter(id => id !== SHARED && !existsSync(join(folder, id, MARKER)))
  const shared = filesBelow(join(folder, SHARED)).map(path => `${SHARED}/${path}`)
  const [register] = existsSync(join(folder, 'tags.csv')) ? text(`${root}/tags.csv`) : []
  return {
    folder: root,
    sites: sites.map(id => readSite(folder, root, id, texts)),
    shared: texts(shared.filter(path => TEXTS.test(path)).map(path => `${root}/${path}`)),
    sharedOthers: shared.filter(path => !TEXTS.test(path)).map(path => path.slice(SHARED.length + 1)),
    ...(register ? { register } : {}),
    unreadable
  }
}

function readSite(
  folder: string,
  root: string,
  id: string,
  texts: (files: readonly string[]) => SourceText[]
): SiteSources {
  const files = filesBelow(join(folder, id))
  const isVisit = (path: string): boolean => /^visits\/[^/]+\.md$/u.test(path)
  const [site] = texts(files.filter(path => path === 'site.md').map(path => `${root}/${id}/${path}`))
  return {
    id,
    folder: `${root}/${id}`,
    ...(site ? { site } : {}),
    visits: texts(files.filter(isVisit).map(path => `${root}/${id}/${path}`)),
    tables: texts(files.filter(path => /^[^/]+\.csv$/iu.test(path)).map(path => `${root}/${id}/${path}`)),
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

/** Undefined where the bytes are not UTF-8. */
function readText(file: string): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file))
  } catch (error) {
    if (error instanceof TypeError) return undefined
    throw error
  }
}

function foldersIn(folder: string): string[] {
  return readdirSync(folder)
    .filter(name => !name.startsWith('.') && statSync(join(folder, name), { throwIfNoEntry: false })?.isDirectory())
    .sort()
}

/** Paths below a folder with forward slashes, sorted. A folder behind a link is not entered, so that no ring of links traps us. */
function filesBelow(folder: string): string[] {
  if (!existsSync(folder)) return []
  const walk = (below: string): string[] =>
    readdirSync(join(folder, below), { withFileTypes: true })
      .filter(entry => !entry.name.startsWith('.'))
      .flatMap(entry => {
        const path = below === '' ? entry.name : `${below}/${entry.name}`
        if (entry.isDirectory()) return walk(path)
        const isFile = entry.isFile() || statSync(join(folder, path), { throwIfNoEntry: false })?.isFile()
        return isFile ? [path] : []
      })
  return walk('').sort()
}
