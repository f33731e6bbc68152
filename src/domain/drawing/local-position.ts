import { roundedText } from '../../units/show.ts'
import type { Calculation, Worked } from '../calculation.ts'
import type { LatLon } from '../distance.ts'
import { numberOf } from '../inputs.ts'
import type { EastNorth } from './spot.ts'

/** WGS 84: half the long axis, m, and flattening (NGA.STND.0036, World Geodetic System 1984). */
const SEMI_MAJOR_M = 6_378_137
const FLATTENING = 1 / 298.257223563
const E2 = FLATTENING * (2 - FLATTENING)

export interface DegreeLengths {
  readonly latitudeM: number
  readonly longitudeM: number
}

/**
 * Length of a degree on the ellipsoid: of latitude by the radius of curvature in the meridian, of longitude by that of the prime vertical
 * (J. P. Snyder, Map Projections: A Working Manual, USGS Professional Paper 1395, 1987, equations 4-18 and 4-20).
 */
export function degreeLengths(latitude: number): DegreeLengths {
  const phi = (latitude * Math.PI) / 180
  const w2 = 1 - E2 * Math.sin(phi) ** 2
  const meridianM = (SEMI_MAJOR_M * (1 - E2)) / w2 ** 1.5
  const normalM = SEMI_MAJOR_M / Math.sqrt(w2)
  return { latitudeM: (meridianM * Math.PI) / 180, longitudeM: (normalM * Math.cos(phi) * Math.PI) / 180 }
}

/** Meters east and north of an origin, by the length of a degree midway; a few kilometers at most. */
export function localPosition(place: LatLon, origin: LatLon): EastNorth {
  const { latitudeM, longitudeM } = degreeLengths((place.latitude + origin.latitude) / 2)
  const turn = place.longitude - origin.longitude
  const near = turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn
  return { eastM: near * longitudeM, northM: (place.latitude - origin.latitude) * latitudeM }
}

function worked(place: LatLon, origin: LatLon): Worked<{ east: number; north: number }> {
  const { latitudeM, longitudeM } = degreeLengths((place.latitude + origin.latitude) / 2)
  const { eastM, northM } = localPosition(place, origin)
  const degrees = (value: number) => roundedText(value, 7)
  return {
    value: { east: eastM, north: northM },
    steps: [
      `a degree here: ${roundedText(latitudeM, 0)} m of latitude, ${roundedText(longitudeM, 0)} m of longitude`,
      `north: (${degrees(place.latitude)} − ${degrees(origin.latitude)}) × ${roundedText(latitudeM, 0)} = ${roundedText(northM, 2)} m`,
      `east: (${degrees(place.longitude)} − ${degrees(origin.longitude)}) × ${roundedText(longitudeM, 0)} = ${roundedText(eastM, 2)} m`
    ]
  }
}

const degreesInput = (does: string) => ({ kind: { is: 'number' } as const, does })

export const localPositionCard: Calculation = {
  name: 'local-position',
  title: 'Meters from degrees',
  does: 'How far east and north of the origin of the drawing a position in degrees lies.',
  inputs: {
    latitude: degreesInput('degrees north of the place'),
    longitude: degreesInput('degrees east of the place'),
    'origin-latitude': degreesInput('degrees north of the origin'),
    'origin-longitude': degreesInput('degrees east of the origin')
  },
  outputs: { east: { does: 'east of the origin', unit: 'm' }, north: { does: 'north of the origin', unit: 'm' } },
  sources: ['snyder-1395', 'wgs84'],
  limits:
    'On a plane that touches the ground of the site: true to a centimeter over a kilometer. A phone is off by meters.',
  run: inputs =>
    worked(
      { latitude: numberOf(inputs, 'latitude'), longitude: numberOf(inputs, 'longitude') },
      { latitude: numberOf(inputs, 'origin-latitude'), longitude: numberOf(inputs, 'origin-longitude') }
    ),
  example: {
    inputs: { latitude: '54.9702', longitude: '-1.6098', 'origin-latitude': '54.97', 'origin-longitude': '-1.61' },
    outputs: { east: 12.81, north: 22.27 }
  }
}

export const localPositionWorked = worked
