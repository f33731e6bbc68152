import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Fault, LoadedSite } from '../load/loaded.ts'
import type { CloseoutPhoto } from '../model/closeout.ts'
import type { Photo, Site } from '../model/site.ts'
import type { OutputFile } from './output-stage.ts'
import { isPictureAt } from './picture-kind.ts'
import { readyPicture } from './picture.ts'
import type { SiteSources } from './read-fleet.ts'

/** Where a site's photographs stand, below its folder and below each page that shows them. */
export const PHOTOS = 'photos'

/** Path of a picture below the folder of its site: in the photos folder, or beside the site file. Undefined where it is in neither. */
export function whereIs(file: string, { others }: SiteSources): string | undefined {
  return [`${PHOTOS}/${file}`, file].find(path => others.includes(path))
}

/**
 * Photographs that the site file or a visit names and that are not in the photos folder, and files there that are no pictures. `isPicture` looks
 * into a file by its path.
 */
export function photoFaults(
  loaded: LoadedSite,
  site: Site,
  sources: SiteSources,
  isPicture: (path: string) => boolean = isPictureAt
): Fault[] {
  return named(site).flatMap(({ photo, subject }) => {
    const where = whereIs(photo.file, sources)
    const fault = (code: string): Fault[] => [
      {
        code,
        subject,
        place: loaded.locate(photo.at),
        details: {
          file: photo.file,
          folder: `${sources.folder}/${PHOTOS}`,
          near: otherwiseWritten(photo.file, sources)
        },
        fatal: false
      }
    ]
    if (where === undefined) return fault('box/photo-not-there')
    return isPicture(join(sources.folder, where)) ? [] : fault('box/photo-not-a-picture')
  })
}

/** The name of a picture that differs in capitals alone, as a camera and a hurried hand write it; empty where there is none. */
function otherwiseWritten(file: string, { others }: SiteSources): string {
  const same = (path: string): boolean => path.toLowerCase() === `${PHOTOS}/${file}`.toLowerCase()
  return others.find(same)?.slice(PHOTOS.length + 1) ?? ''
}

type NamedPhoto = Photo | CloseoutPhoto

/** Every photograph that the site file or a visit names, with what it is of. */
function named({ boxes, closeout, visits }: Site): { readonly photo: NamedPhoto; readonly subject: string }[] {
  return [
    ...boxes.flatMap(box => box.photos.map(photo => ({ photo, subject: box.id }))),
    ...(closeout?.photographs ?? []).map(photo => ({ photo, subject: photo.of ?? photo.file })),
    ...visits.flatMap(visit => (visit.photos ?? []).map(photo => ({ photo, subject: `visit ${visit.on}` })))
  ]
}

/** The site without the photographs that are not there or are no pictures, so that no page shows a hole. */
export function withPhotosThere(site: Site, sources: SiteSources): Site {
  const there = <P extends NamedPhoto>(photos: readonly P[]) => photos.filter(photo => isThere(photo.file, sources))
  const { closeout } = site
  return {
    ...site,
    boxes: site.boxes.map(box => ({ ...box, photos: there(box.photos) })),
    visits: site.visits.map(visit => (visit.photos ? { ...visit, photos: there(visit.photos) } : visit)),
    ...(closeout ? { closeout: { ...closeout, photographs: there(closeout.photographs) } } : {})
  }
}

function isThere(file: string, sources: SiteSources): boolean {
  const where = whereIs(file, sources)
  return where !== undefined && isPictureAt(join(sources.folder, where))
}

/** Copies for the office pages, each file once, and for the public page of each box its own; those of visits are for the office alone. */
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
