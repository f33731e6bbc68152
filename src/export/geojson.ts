import type { PageContext } from '../binder/context.ts'
import type { DueItem } from '../binder/due-items.ts'
import type { Box, Site } from '../model/site.ts'

interface Point {
  readonly type: 'Point'
  readonly coordinates: readonly number[]
}

export interface Feature {
  readonly type: 'Feature'
  readonly id: string
  /** RFC 7946, section 3.2: null where the place is not known. */
  readonly geometry: Point | null
  readonly properties: Readonly<Record<string, unknown>>
}

export interface FeatureCollection {
  readonly type: 'FeatureCollection'
  readonly features: readonly Feature[]
}

/**
 * Sites and valve boxes as GeoJSON (RFC 7946: WGS 84, longitude first). A box without a position of its own has no geometry: the point of its
 * site would be a wrong place to dig. For the office: nothing private is in it, and it is not for hosting.
 */
export function boxesGeojson(contexts: readonly PageContext[]): FeatureCollection {
  return {
    type: 'FeatureCollection',
    features: contexts.flatMap(({ site }) => siteFeatures(site))
  }
}

/** A site and its boxes, in order. */
export function siteFeatures(site: Site): Feature[] {
  return [siteFeature(site), ...site.boxes.map(box => boxFeature(site, box))]
}

/** What is due, each at its box where that has a position, else at its site; of `features`, those of the sites and their boxes. */
export function dueGeojson(items: readonly DueItem[], features: readonly Feature[]): FeatureCollection {
  const places = new Map(features.map(({ id, geometry }) => [id, geometry]))
  return {
    type: 'FeatureCollection',
    features: items.map(({ site, box, kind, what, subject, state, task, dueOn }) => ({
      type: 'Feature',
      id: [site, kind, subject, task?.task ?? ''].filter(Boolean).join('/'),
      geometry: (box === undefined ? null : places.get(boxId(site, box))) ?? places.get(site) ?? null,
      properties: { site, box: box ?? null, subject, kind, what, state, due_on: dueOn ?? null }
    }))
  }
}

const boxId = (site: string, box: string): string => `${site}/${box}`

function siteFeature(site: Site): Feature {
  const { id, title, place, status } = site
  return {
    type: 'Feature',
    id,
    geometry: sitePoint(site),
    properties: { kind: 'site', site: id, title, place, status, address: site.location?.address ?? null }
  }
}

function boxFeature(site: Site, box: Box): Feature {
  const serves = site.stations.filter(one => one.valves.some(valve => valve.box === box.id)).map(one => one.id)
  return {
    type: 'Feature',
    id: boxId(site.id, box.id),
    geometry: boxPoint(box),
    properties: {
      kind: 'box',
      site: site.id,
      box: box.id,
      tag: box.tag ?? null,
      where: box.where ?? null,
      ties: box.ties,
      status: box.status ?? 'in use',
      stations: serves,
      accuracy_m: box.position?.accuracy?.si ?? null
    }
  }
}

function boxPoint({ position }: Box): Point | null {
  return position ? point(position.longitude, position.latitude) : null
}

function sitePoint({ location }: Site): Point | null {
  const { latitude, longitude, elevation } = location ?? {}
  return latitude === undefined || longitude === undefined ? null : point(longitude, latitude, elevation?.si)
}

/** Seven decimals are a centimeter. */
function point(longitude: number, latitude: number, elevationM?: number): Point {
  const rounded = [longitude, latitude].map(one => Number(one.toFixed(7)))
  return { type: 'Point', coordinates: [...rounded, ...(elevationM === undefined ? [] : [elevationM])] }
}
