/** Meters east and north of the origin of a drawing. */
export interface EastNorth {
  readonly eastM: number
  readonly northM: number
}

export function apartM(a: EastNorth, b: EastNorth): number {
  return Math.hypot(b.eastM - a.eastM, b.northM - a.northM)
}

/** Middle of the corners of a shape by area, or of its points where it has none (the shoelace formula). */
export function middleOf(points: readonly EastNorth[]): EastNorth {
  let [area, east, north] = [0, 0, 0]
  for (const [index, a] of points.entries()) {
    const b = points[(index + 1) % points.length] ?? a
    const cross = a.eastM * b.northM - b.eastM * a.northM
    area += cross / 2
    east += ((a.eastM + b.eastM) * cross) / 6
    north += ((a.northM + b.northM) * cross) / 6
  }
  if (Math.abs(area) > 1e-9) return { eastM: east / area, northM: north / area }
  const mean = (of: (one: EastNorth) => number) => points.reduce((sum, one) => sum + of(one), 0) / points.length
  return { eastM: mean(one => one.eastM), northM: mean(one => one.northM) }
}
