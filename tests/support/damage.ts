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

/** What is damaged within a picture, in pixels: a code, which has so many modules on a side, or a whole label. */
export interface Place {
  readonly left: number
  readonly top: number
  readonly side: number
  /** Left out where it is square. */
  readonly height?: number
  readonly modules: number
}

export type Where = 'data area' | 'anywhere'

/**
 * What stays on the label: so much of the area, a fraction, is covered, nine tenths of it by one to four blots, dark or light, the rest by
 * scratches; then the print fades, more on one side than on the other. The share is counted pixel by pixel.
 */
export function damaged(picture: Picture, place: Place, share: number, where: Where, chance: () => number): Picture {
  const dirty = { ...picture, data: new Uint8ClampedArray(picture.data) }
  const may = allowed(place, where)
  const covered = new Set<number>()
  const whole = areaOf(place, may)
  blots(dirty, place, may, covered, share * whole * 0.9, chance)
  scratches(dirty, place, may, covered, share * whole, chance)
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

function allowed({ left, top, side, height = side, modules }: Place, where: Where): Allowed {
  const module = side / modules
  const inside = (x: number, y: number) => x >= left && y >= top && x < left + side && y < top + height
  if (where === 'anywhere') return inside
  return (x, y) => {
    const [column, row] = [Math.floor((x - left) / module), Math.floor((y - top) / module)]
    if (!inside(x, y) || column === 6 || row === 6) return false
    const low = (at: number) => at < MARK
    const high = (at: number) => at >= modules - MARK + 1
    return !((low(column) && low(row)) || (high(column) && low(row)) || (low(column) && high(row)))
  }
}

function areaOf({ left, top, side, height = side }: Place, may: Allowed): number {
  let count = 0
  for (let y = Math.floor(top); y < top + height; y += 1)
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
  { left, top, side, height = side }: Place,
  may: Allowed,
  covered: Set<number>,
  target: number,
  chance: () => number
): void {
  const count = 1 + Math.floor(chance() * 4)
  const radius = Math.sqrt(target / count / Math.PI)
  for (let tries = 0; covered.size < target && tries < 400; tries += 1) {
    const r = radius * (0.6 + 0.8 * chance())
    const [middleX, middleY] = [left + chance() * side, top + chance() * height]
    const shade = chance() < 0.5 ? 25 + 40 * chance() : 215 + 40 * chance()
    for (let y = Math.floor(middleY - r); y <= middleY + r; y += 1)
      for (let x = Math.floor(middleX - r); x <= middleX + r; x += 1)
        if (covered.size < target && (x - middleX) ** 2 + (y - middleY) ** 2 <= r * r)
          cover(picture, covered, may, x, y, shade)
  }
}

function scratches(
  picture: Picture,
  { left, top, side, height = side }: Place,
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
    const [startX, startY] = [left + chance() * side, top + chance() * height]
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
  const out = new Uint8ClampedArray(side * side * 4).fill(255)
  const [middleX, middleY] = [width / 2, height / 2]
  // From afar one pixel of the phone covers several of the label: the mean of four shades within it.
  const quarter = 1 / scale > 1.2 ? 0.25 / scale : 0
  const at = (x: number, y: number): number => shadeAt(data, width, height, x, y)
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      const [u, v] = [(x - side / 2) / scale, (y - side / 2) / scale]
      const depth = 1 + (pullX * u) / middleX + (pullY * v) / middleY
      const fromX = middleX + (u * cos + v * sin) / depth
      const fromY = middleY + (v * cos - u * sin) / depth
      const shade =
        quarter === 0
          ? at(fromX, fromY)
          : (at(fromX - quarter, fromY - quarter) +
              at(fromX + quarter, fromY - quarter) +
              at(fromX - quarter, fromY + quarter) +
              at(fromX + quarter, fromY + quarter)) /
            4
      const seenAt = (y * side + x) * 4
      out[seenAt] = out[seenAt + 1] = out[seenAt + 2] = shade + (chance() - 0.5) * 16
    }
  return { data: out, width: side, height: side }
}

/** What is round the label. */
const ROUND = 230

/** The shade between four pixels; that of the surroundings outside the picture. */
function shadeAt(data: Uint8ClampedArray, width: number, height: number, x: number, y: number): number {
  const left = Math.floor(x)
  const top = Math.floor(y)
  if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) return ROUND
  const first = (top * width + left) * 4
  const below = first + width * 4
  const dx = x - left
  const dy = y - top
  const upper = (data[first] ?? 0) * (1 - dx) + (data[first + 4] ?? 0) * dx
  const lower = (data[below] ?? 0) * (1 - dx) + (data[below + 4] ?? 0) * dx
  return upper * (1 - dy) + lower * dy
}
