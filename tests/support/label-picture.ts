import { PLAIN_LABEL } from '../../src/binder/label-size.ts'
import type { LabelCode } from './label-reading.ts'
import type { Picture } from './read-codes.ts'

const DOTS_PER_MM = 300 / 25.4
/** Edge of the plate and what is left beside the codes; the line of hazard above them, mm. */
const SIDE = 3.3
const TOP = 9.4
const BOTTOM = 0.9

interface CutOut {
  readonly left: number
  readonly top: number
  readonly side: number
}

/** The four codes of a plain label at their places, large ones first, its words left out; and where each can be cut out with its quiet zone. */
export function labelPicture(codes: readonly LabelCode[]): { picture: Picture; places: readonly CutOut[] } {
  const [width, height] = [dots(PLAIN_LABEL.widthMm), dots(PLAIN_LABEL.heightMm)]
  const data = new Uint8ClampedArray(width * height * 4).fill(255)
  const places = codes.map(({ picture: { width: side } }, at) => ({
    left: at % 2 === 0 ? dots(SIDE) : width - dots(SIDE) - side,
    top: at < 2 ? dots(TOP) : height - dots(BOTTOM) - side,
    side
  }))
  for (const [at, { left, top, side }] of places.entries()) {
    const code = codes[at]?.picture.data ?? data
    for (let row = 0; row < side; row += 1)
      data.set(code.subarray(row * side * 4, (row + 1) * side * 4), ((top + row) * width + left) * 4)
  }
  return { picture: { data, width, height }, places }
}

const dots = (mm: number): number => Math.round(mm * DOTS_PER_MM)
