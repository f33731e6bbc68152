import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Fault, LoadedSite } from '../load/loaded.ts'
import type { CloseoutPhoto } from '../model/closeout.ts'
import type { Photo, Site } from '../model/site.ts'
import type { OutputFile } from './output-stage.ts'
import { readyPicture } from './picture.ts'
import type { SiteSources } from './read-fleet.ts'

/** Where a site's photographs stand, below its folder and below each page that shows them. */
const PHOTOS = 'photos'

/** Path of a picture below the folder of its site: in the photos folder, or beside the site file. Undefined where it is in neither. */
function whereIs(file: string, { others }: SiteSources): string | undefined {
  return [`${PHOTOS}/${file}`, file].find(path => others.includes(path))
}

/** A photograph that the site file names and that is not in its photos folder. */
export function photoFaults(loaded: LoadedSite, site: Site, sources: SiteSources): Fault[] {
  return named(site)
    .filter(({ photo }) => whereIs(photo.file, sources) === undefined)
    .map<Fault>(({ photo, subject }) => ({
      code: 'box/photo-not-there',
      subject,
      place: loaded.locate(photo.at),
      details: { file: photo.file, folder: `${sources.folder}/${PHOTOS}` },
      fatal: false
    }))
}

type NamedPhoto = Photo | CloseoutPhoto

/** Every photograph that the site file names, with what it is of. */
function named({ boxes, closeout }: Site): { readonly photo: NamedPhoto; readonly subject: string }[] {
  return [
    ...boxes.flatMap(box => box.photos.map(photo => ({ photo, subject: box.id }))),
    ...(closeout?.photographs ?? []).map(photo => ({ photo, subject: photo.of ?? photo.file }))
  ]
}

/** The site without the photographs that are not there, so that no page shows a hole. */
export function withPhotosThere(site: Site, sources: SiteSources): Site {
  const there = <P extends NamedPhoto>(photos: readonly P[]) =>
    photos.filter(photo => whereIs(photo.file, sources) !== undefined)
  const { closeout } = site
  return {
    ...site,
    boxes: site.boxes.map(box => ({ ...box, photos: there(box.photos) })),
    ...(closeout ? { closeout: { ...closeout, photographs: there(closeout.photographs) } } : {})
  }
}

/** Copies for the office pages, each file once, and for the public page of each box its own. */
export async function photoOutputs(site: Site, sources: SiteSources): Promise<OutputFile[]> {
  const files = [...new Set(named(site).map(({ photo }) => photo.file))]
  const ready = new Map<string, Uint8Array>()
  // One after the other: a site may have hundreds, and each is large while it is worked on.
  for (const file of files)
    ready.set(file, await readyPicture(readFileSync(join(sources.folder, whereIs(file, sources) ?? '')), file))
  const contentOf = (file: string) => ready.get(file) ?? new Uint8Array()
  // The box page shows the first picture only.
  const ofBoxes = site.boxes.flatMap(({ tag, photos: [first] }) =>
    tag !== undefined && first ? [{ tag, file: first.file }] : []
  )
  return [
    ...files.map(file => ({ path: `office/${site.id}/${PHOTOS}/${file}`, content: contentOf(file) })),
    ...ofBoxes.map(({ tag, file }) => ({ path: `public/B/${tag}/${PHOTOS}/${file}`, content: contentOf(file) }))
  ]
}
