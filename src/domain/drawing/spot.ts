/** Meters east and north of the origin of a drawing. */
export interface EastNorth {
  readonly eastM: number
  readonly northM: number
}

export function apartM(a: EastNorth, b: EastNorth): number {
  return Math.hypot(b.eastM - a.eastM, b.northM - a.northM)
}

/** How far a spot is from a shape of corners in order, m; 0 within it. */
export function reachM(shape: readonly EastNorth[], spot: EastNorth): number {
  const sides = shape.map((a, index) => [a, shape[(index + 1) % shape.length] ?? a] as const)
  const crossed = sides.filter(([a, b]) => crosses(a, b, spot)).length
  return crossed % 2 === 1 ? 0 : Math.min(...sides.map(([a, b]) => sideM(a, b, spot)))
}

/** Whether the way east from the spot meets the side. */
function crosses(a: EastNorth, b: EastNorth, { eastM, northM }: EastNorth): boolean {
  if (a.northM <= northM === b.northM <= northM) return false
  return a.eastM + ((northM - a.northM) / (b.northM - a.northM)) * (b.eastM - a.eastM) > eastM
}

function sideM(a: EastNorth, b: EastNorth, spot: EastNorth): number {
  const [east, north] = [b.eastM - a.eastM, b.northM - a.northM]
  const long2 = east ** 2 + north ** 2
  const along = ((spot.eastM - a.eastM) * east + (spot.northM - a.northM) * north) / (long2 || 1)
  const share = Math.min(1, Math.max(0, along))
  return apartM(spot, { eastM: a.eastM + share * east, northM: a.northM + share * north })
}
