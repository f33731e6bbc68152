import { element, rounded } from '../svg.ts'

export interface Spot {
  readonly x: number
  readonly y: number
}

interface Strokes {
  readonly degrees: number
  readonly gapMm: number
  readonly dash?: string
  readonly round?: true
  readonly widthMm?: number
}

/** Told apart in a grey photocopy by direction, spacing and dash, not by tone. Ours, in no standard order. */
export const PATTERNS: readonly (readonly Strokes[])[] = [
  [{ degrees: 45, gapMm: 2.2 }],
  [{ degrees: 0, gapMm: 2, dash: '0 2', round: true, widthMm: 0.7 }],
  [{ degrees: 135, gapMm: 2.2, dash: '2.6 1.3' }],
  [
    { degrees: 0, gapMm: 3 },
    { degrees: 90, gapMm: 3 }
  ],
  [{ degrees: 90, gapMm: 1.9 }],
  [
    { degrees: 45, gapMm: 3.6 },
    { degrees: 135, gapMm: 3.6 }
  ],
  [{ degrees: 0, gapMm: 1.9, dash: '3.4 1.2' }],
  [{ degrees: 30, gapMm: 3.4, dash: '0 2.4', round: true, widthMm: 1.1 }],
  [{ degrees: 135, gapMm: 1.7 }],
  [
    { degrees: 0, gapMm: 2.6 },
    { degrees: 90, gapMm: 5.2, dash: '2.6 2.6' }
  ],
  [{ degrees: 0, gapMm: 2.4, widthMm: 0.8 }],
  [{ degrees: 90, gapMm: 2.4, dash: '1.2 1.6', widthMm: 0.9 }],
  [{ degrees: 45, gapMm: 3.2, widthMm: 1 }],
  [
    { degrees: 135, gapMm: 3.2 },
    { degrees: 45, gapMm: 3.2, dash: '0 3.2', round: true, widthMm: 1 }
  ],
  [
    { degrees: 0, gapMm: 3.4 },
    { degrees: 60, gapMm: 3.4 },
    { degrees: 120, gapMm: 3.4 }
  ],
  [{ degrees: 45, gapMm: 2.5, dash: '0 3.4', round: true, widthMm: 1.7 }],
  [
    { degrees: 90, gapMm: 3.2 },
    { degrees: 0, gapMm: 2.2, dash: '0 1.6', round: true, widthMm: 0.6 }
  ],
  [{ degrees: 0, gapMm: 1.2 }],
  [{ degrees: 135, gapMm: 3.4, dash: '3 2', widthMm: 1 }],
  [
    { degrees: 45, gapMm: 1.7 },
    { degrees: 135, gapMm: 1.7 }
  ],
  [{ degrees: 90, gapMm: 3.6, widthMm: 1.4 }],
  [
    { degrees: 0, gapMm: 1.5 },
    { degrees: 90, gapMm: 1.5 }
  ],
  [
    { degrees: 0, gapMm: 3.2, widthMm: 0.8 },
    { degrees: 45, gapMm: 2.6 }
  ],
  [{ degrees: 90, gapMm: 1.6, dash: '3.4 1.6' }]
]

/** Strokes of a pattern, clipped to a shape by arithmetic: a pattern element would need an id, and ids must be unique in a page. */
export function patternFill(shape: readonly Spot[], pattern: number): string {
  const strokes = PATTERNS[pattern % PATTERNS.length] ?? []
  return strokes
    .map(({ degrees, gapMm, dash, round, widthMm = 0.22 }) =>
      element('path', {
        d: hatchPath(shape, degrees, gapMm),
        class: 'plan-pattern',
        'stroke-width': widthMm,
        'stroke-dasharray': dash,
        'stroke-linecap': round ? 'round' : undefined
      })
    )
    .join('')
}

/** Parallel strokes at an angle through a shape of any form, even-odd; they run through the origin, so that shapes side by side match. */
export function hatchPath(shape: readonly Spot[], degrees: number, gap: number): string {
  const angle = (degrees * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const turned = shape.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }))
  const back = ({ x, y }: Spot) => `${rounded(x * cos + y * sin)} ${rounded(-x * sin + y * cos)}`
  const ys = turned.map(one => one.y)
  const parts: string[] = []
  for (let row = Math.ceil(Math.min(...ys) / gap); row * gap < Math.max(...ys); row += 1) {
    const y = (row + 0.5) * gap
    const xs = crossings(turned, y)
    for (let index = 0; index + 1 < xs.length; index += 2)
      parts.push(`M${back({ x: xs[index] ?? 0, y })}L${back({ x: xs[index + 1] ?? 0, y })}`)
  }
  return parts.join('')
}

function crossings(shape: readonly Spot[], y: number): number[] {
  return shape
    .flatMap((a, index) => {
      const b = shape[(index + 1) % shape.length] ?? a
      return a.y <= y === b.y <= y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)]
    })
    .sort((one, other) => one - other)
}

/** A spot inside the shape, the middle of the widest stretch through its middle height. */
export function insideOf(shape: readonly Spot[]): Spot {
  const ys = shape.map(one => one.y)
  const y = (Math.min(...ys) + Math.max(...ys)) / 2 + 0.001
  const xs = crossings(shape, y)
  let best: Spot = { x: xs[0] ?? shape[0]?.x ?? 0, y }
  let widest = -1
  for (let index = 0; index + 1 < xs.length; index += 2) {
    const [from = 0, to = 0] = [xs[index], xs[index + 1]]
    if (to - from > widest) [widest, best] = [to - from, { x: (from + to) / 2, y }]
  }
  return best
}
