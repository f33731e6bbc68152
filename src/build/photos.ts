import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Fault, LoadedSite } from '../load/loaded.ts'
import type { Site } from '../model/site.ts'
import type { OutputFile } from './output-stage.ts'
import type { SiteSources } from './read-fleet.ts'

/** Where a site's photographs stand, below its folder and below each page that shows them. */
const PHOTOS = 'photos'

/** Path of a picture below the folder of its site: in the photos folder, or beside the site file. Undefined where it is in neither. */
function whereIs(file: string, { others }: SiteSources): string | undefined {
  return [`${PHOTOS}/${file}`, file].find(path => others.includes(path))
}

/** A photograph that the site file names and that is not in its photos folder. */
export function photoFaults(loaded: LoadedSite, site: Site, sources: SiteSources): Fault[] {
  return site.boxes.flatMap(box =>
    box.photos
      .filter(photo => whereIs(photo.file, sources) === undefined)
      .map<Fault>(photo => ({
        code: 'box/photo-not-there',
        subject: box.id,
        place: loaded.locate(photo.at),
        details: { file: photo.file, folder: `${sources.folder}/${PHOTOS}` },
        fatal: false
      }))
  )
}

/** The site without the photographs that are not there, so that no page shows a hole. */
export function withPhotosThere(site: Site, sources: SiteSources): Site {
  return {
    ...site,
    boxes: site.boxes.map(box => ({
      ...box,
      photos: box.photos.filter(photo => whereIs(photo.file, sources) !== undefined)
    }))
  }
}

/** Copies for the office pages, and for the public page of each box its own. */
export function photoOutputs(site: Site, sources: SiteSources): OutputFile[] {
  return site.boxes.flatMap(box =>
    box.photos.flatMap((photo, index) => {
      const content = readFileSync(join(sources.folder, whereIs(photo.file, sources) ?? ''))
      const office = { path: `office/${site.id}/${PHOTOS}/${photo.file}`, content }
      // The box page shows the first picture only.
      return box.tag !== undefined && index === 0
        ? [office, { path: `public/B/${box.tag}/${PHOTOS}/${photo.file}`, content }]
        : [office]
    })
  )
}
