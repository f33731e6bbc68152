import type { LatLon } from '../domain/distance.ts'
import { groundAreaM2 } from '../domain/drawing/ground-area.ts'

/** Rings of a Polygon or a MultiPolygon: RFC 7946, 3.1.6 and 3.1.7. Undefined for any other shape; a text where its corners are no ground. */
export function groundOf(geometry: { readonly type?: unknown; readonly coordinates?: unknown } | null | undefined) {
  const { type, coordinates } = geometry ?? {}
  if (type !== 'Polygon' && type !== 'MultiPolygon') return undefined
  const polygons = type === 'Polygon' ? [coordinates] : coordinates
  const read = Array.isArray(polygons) ? (polygons as unknown[]).map(ringsOf) : []
  const areaM2 = read.reduce<number>((sum, rings) => sum + (rings ? groundAreaM2(rings) : NaN), 0)
  return areaM2 > 0 ? { areaM2 } : 'no-ground'
}

/** A ring has four corners or more, the last as the first. */
const LEAST_CORNERS = 4

function ringsOf(polygon: unknown): LatLon[][] | undefined {
  if (!Array.isArray(polygon) || polygon.length === 0) return undefined
  const rings = (polygon as unknown[]).map(ring =>
    Array.isArray(ring) && ring.length >= LEAST_CORNERS ? (ring as unknown[]).flatMap(cornerOf) : []
  )
  const isWhole = rings.every((ring, index) => ring.length > 0 && ring.length === (polygon[index] as unknown[]).length)
  return isWhole ? rings : undefined
}

function cornerOf(corner: unknown): LatLon[] {
  const [longitude, latitude] = Array.isArray(corner) ? (corner as unknown[]) : []
  if (typeof longitude !== 'number' || typeof latitude !== 'number') return []
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? [{ latitude, longitude }] : []
}

/** "412 m²"; of a small bed the tenth too. */
export function areaCell(areaM2: number): string {
  return `${areaM2 < 100 ? Math.round(areaM2 * 10) / 10 : Math.round(areaM2)} m²`
}
