import type { Picture } from './read-codes.ts'

/* A label under a lid after some years: blots of dirt and of lost print, scratches, fading, and a phone that is not held square. */

/** Numbers from 0 to 1, the same for the same seed. mulberry32. */
export function chances(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** A code within its picture: where it stands, in pixels, and how many modules it has on a side. */
export interface CodePlace {
  readonly left: number
  readonly top: number
  readonly side: number
  readonly modules: number
}

export type Where = 'data area' | 'anywhere'

/**
 * What stays on the label: so much of the area, a fraction, is covered, nine tenths of it by one to four blots, dark or light, the rest by
 * scratches; then the print fades, more on one side than on the other.
 */
export function damaged(picture: Picture, code: CodePlace, share: number, where: Where, chance: () => number): Picture {
  const dirty = { ...picture, data: new Uint8ClampedArray(picture.data) }
  const may = allowed(code, where)
  const covered = new Set<number>()
  const whole = areaOf(code, may)
  blots(dirty, code, may, covered, share * whole * 0.9, chance)
  scratches(dirty, code, may, covered, share * whole, chance)
  fade(dirty, chance)
  return dirty
}

/** How the phone is held at one look. */
export interface Look {
  /** Turned by up to so many degrees to either side. */
  readonly turn: number
  /** Pixels of the look to a pixel of the label: nearer or farther. */
  readonly scale: number
}

/** The looks of a phone that is moved a little until it reads: square and near first, then turned, nearer and farther. */
export const LOOKS: readonly Look[] = [
  { turn: 4, scale: 1 },
  { turn: 45, scale: 0.6 },
  { turn: 45, scale: 0.4 },
  { turn: 45, scale: 0.8 },
  { turn: 45, scale: 0.5 },
  { turn: 45, scale: 0.35 },
  { turn: 45, scale: 0.9 },
  { turn: 45, scale: 0.45 }
]

type Allowed = (x: number, y: number) => boolean

/** Finder marks with their border and format bits are nine modules wide. ISO/IEC 18004:2024, symbol structure. */
const MARK = 9

function allowed({ left, top, side, modules }: CodePlace, where: Where): Allowed {
  const module = side / modules
  const inside = (x: number, y: number) => x >= left && y >= top && x < left + side && y < top + side
  if (where === 'anywhere') return inside
  return (x, y) => {
    const [column, row] = [Math.floor((x - left) / module), Math.floor((y - top) / module)]
    if (!inside(x, y) || column === 6 || row === 6) return false
    const low = (at: number) => at < MARK
    const high = (at: number) => at >= modules - MARK + 1
    return !((low(column) && low(row)) || (high(column) && low(row)) || (low(column) && high(row)))
  }
}

function areaOf({ left, top, side }: CodePlace, may: Allowed): number {
  let count = 0
  for (let y = Math.floor(top); y < top + side; y += 1)
    for (let x = Math.floor(left); x < left + side; x += 1) if (may(x, y)) count += 1
  return count
}

function cover(picture: Picture, covered: Set<number>, may: Allowed, x: number, y: number, shade: number): void {
  if (x < 0 || y < 0 || x >= picture.width || y >= picture.height || !may(x, y)) return
  const at = y * picture.width + x
  covered.add(at)
  picture.data.fill(shade, at * 4, at * 4 + 3)
}

function blots(
  picture: Picture,
  { left, top, side }: CodePlace,
  may: Allowed,
  covered: Set<number>,
  target: number,
  chance: () => number
): void {
  const count = 1 + Math.floor(chance() * 4)
  const radius = Math.sqrt(target / count / Math.PI)
  for (let tries = 0; covered.size < target && tries < 400; tries += 1) {
    const r = radius * (0.6 + 0.8 * chance())
    const [middleX, middleY] = [left + chance() * side, top + chance() * side]
    const shade = chance() < 0.5 ? 25 + 40 * chance() : 215 + 40 * chance()
    for (let y = Math.floor(middleY - r); y <= middleY + r; y += 1)
      for (let x = Math.floor(middleX - r); x <= middleX + r; x += 1)
        if (covered.size < target && (x - middleX) ** 2 + (y - middleY) ** 2 <= r * r)
          cover(picture, covered, may, x, y, shade)
  }
}

function scratches(
  picture: Picture,
  { left, top, side }: CodePlace,
  may: Allowed,
  covered: Set<number>,
  target: number,
  chance: () => number
): void {
  for (let tries = 0; covered.size < target && tries < 400; tries += 1) {
    const turn = chance() * Math.PI
    const length = side * (0.2 + 0.6 * chance())
    const half = 1 + 2 * chance()
    const shade = chance() < 0.7 ? 235 : 60
    const [startX, startY] = [left + chance() * side, top + chance() * side]
    for (let along = 0; along < length && covered.size < target; along += 0.7)
      for (let across = -half; across <= half; across += 0.7)
        cover(
          picture,
          covered,
          may,
          Math.round(startX + along * Math.cos(turn) - across * Math.sin(turn)),
          Math.round(startY + along * Math.sin(turn) + across * Math.cos(turn)),
          shade
        )
  }
}

/** Ink turns pale and paper turns grey. */
function fade({ data, width, height }: Picture, chance: () => number): void {
  const [first, second] = [0.45 + 0.4 * chance(), 0.45 + 0.4 * chance()]
  const paper = 200 + 40 * chance()
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = (y * width + x) * 4
      const contrast = first + ((second - first) * x) / width
      data.fill(paper - (255 - (data[at] ?? 0)) * contrast * (paper / 255), at, at + 3)
    }
}

/** One look at a label: turned, drawn in by up to 4 % at its corners, from nearer or farther, with the grain of a phone in poor light. */
export function seen({ data, width, height }: Picture, { turn, scale }: Look, chance: () => number): Picture {
  const angle = ((chance() - 0.5) * 2 * turn * Math.PI) / 180
  const [pullX, pullY] = [(chance() - 0.5) * 0.04, (chance() - 0.5) * 0.04]
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
  const side = Math.ceil(1.06 * Math.max(width, height) * scale * (cos + Math.abs(sin)))
  const out = new Uint8ClampedArray(side * side * 4).fill(230)
  const [middleX, middleY] = [width / 2, height / 2]
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      const [u, v] = [(x - side / 2) / scale, (y - side / 2) / scale]
      const depth = 1 + (pullX * u) / middleX + (pullY * v) / middleY
      const sourceX = middleX + (u * cos + v * sin) / depth
      const sourceY = middleY + (v * cos - u * sin) / depth
      const shade = pooled(data, width, height, sourceX, sourceY, 1 / scale) ?? 230
      out.fill(shade + (chance() - 0.5) * 16, (y * side + x) * 4, (y * side + x) * 4 + 3)
    }
  for (let at = 3; at < out.length; at += 4) out[at] = 255
  return { data: out, width: side, height: side }
}

/** The mean of four shades within one pixel of the phone, which from afar covers several of the label. */
function pooled(
  data: Uint8ClampedArray,
  width: number,
  height: number,
  x: number,
  y: number,
  span: number
): number | undefined {
  const quarter = span > 1.2 ? span / 4 : 0
  if (quarter === 0) return between(data, width, height, x, y)
  const parts = [-quarter, quarter].flatMap(dx =>
    [-quarter, quarter].map(dy => between(data, width, height, x + dx, y + dy))
  )
  let total = 0
  for (const part of parts) {
    if (part === undefined) return undefined
    total += part
  }
  return total / parts.length
}

/** The shade between four pixels; undefined outside the picture. */
function between(data: Uint8ClampedArray, width: number, height: number, x: number, y: number): number | undefined {
  const [left, top] = [Math.floor(x), Math.floor(y)]
  if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) return undefined
  const at = (column: number, row: number) => data[(row * width + column) * 4] ?? 0
  const [dx, dy] = [x - left, y - top]
  const upper = at(left, top) * (1 - dx) + at(left + 1, top) * dx
  const lower = at(left, top + 1) * (1 - dx) + at(left + 1, top + 1) * dx
  return upper * (1 - dy) + lower * dy
}
