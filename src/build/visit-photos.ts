import { readFileSync, realpathSync, statSync } from 'node:fs'
import { basename, relative, sep } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import { PHOTOS, whereIs } from './photos.ts'
import { readyPicture } from './picture.ts'
import { pictureKind } from './picture-kind.ts'
import type { SiteSources } from './read-fleet.ts'

/** A photograph of a visit, as the visit will name it. */
export interface VisitPhotoFile {
  readonly file: string
  readonly caption?: string
  /** What it was called where it was given. */
  readonly was: string
  /** To be written into the photos folder; left out where it is there already. */
  readonly copy?: { readonly path: string; readonly content: Uint8Array }
}

/**
 * Pictures that go with a visit, each "file" or "file=words". One from elsewhere is made ready for a copy in the photos folder of the site: turned
 * upright, sized, without what the camera wrote into it, under a name that is free. Nothing is written.
 */
export async function takeVisitPhotos(given: readonly string[], sources: SiteSources): Promise<VisitPhotoFile[]> {
  const taken: VisitPhotoFile[] = []
  // One after the other: each is large while it is worked on, and a name is free only until the one before has it.
  for (const one of given) taken.push(await takePhoto(one, sources, taken))
  return taken
}

async function takePhoto(
  given: string,
  sources: SiteSources,
  before: readonly VisitPhotoFile[]
): Promise<VisitPhotoFile> {
  const [path, caption] = parted(given, sources)
  const named = { was: basename(path), ...(caption ? { caption } : {}) }
  const inside = insideName(path, sources)
  if (inside !== undefined) return { file: inside, ...named }
  if (!isFile(path))
    throw new Refusal(
      `There is no picture ${path}.`,
      `Name a file that is there, or one in ${sources.folder}/${PHOTOS}. Nothing was written.`
    )
  const bytes = bytesOf(path)
  const kind = pictureKind(bytes)
  if (!kind)
    throw new Refusal(`${path} is not a picture in JPEG, PNG or WebP.`, 'Save it anew as JPEG. Nothing was written.')
  const content = await readyPicture(bytes, path)
  const stem = stemOf(path)
  const ending = { jpeg: 'jpg', png: 'png', webp: 'webp' }[kind]
  for (let number = 1; ; number += 1) {
    const file = `${stem}${number > 1 ? `-${number}` : ''}.${ending}`
    const target = `${sources.folder}/${PHOTOS}/${file}`
    if (before.some(one => one.file === file)) continue
    if (!sources.others.includes(`${PHOTOS}/${file}`)) return { file, ...named, copy: { path: target, content } }
    if (Buffer.compare(bytesOf(target), content) === 0) return { file, ...named }
  }
}

/** The words stand behind the first equals sign, unless a file has the whole as its name. */
function parted(given: string, sources: SiteSources): [path: string, caption: string] {
  const at = given.indexOf('=')
  if (at < 0 || isFile(given) || whereIs(given, sources) !== undefined) return [given.trim(), '']
  return [given.slice(0, at).trim(), given.slice(at + 1).trim()]
}

/** The name under which the site has it already, given by that name or by its path. */
function insideName(path: string, sources: SiteSources): string | undefined {
  if (!isFile(path)) return whereIs(path, sources) === undefined ? undefined : path
  const below = relative(realpathSync(sources.folder), realpathSync(path)).split(sep).join('/')
  const name = below.startsWith(`${PHOTOS}/`) ? below.slice(PHOTOS.length + 1) : below
  return whereIs(name, sources) === undefined ? undefined : name
}

/** Small letters, figures and hyphens: a name that every system and every page takes. */
function stemOf(path: string): string {
  const stem = basename(path)
    .replace(/\.[^.]*$/u, '')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-+|-+$/gu, '')
  return stem.slice(0, 60) || 'photo'
}

const isFile = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isFile() === true

function bytesOf(path: string): Uint8Array {
  try {
    return new Uint8Array(readFileSync(path))
  } catch {
    throw new Refusal(`${path} cannot be read.`, 'Nothing was written.')
  }
}
