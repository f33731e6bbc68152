import type { QrSpec } from '../../src/binder/blocks.ts'
import { qrMatrix } from '../../src/render/qr-svg.ts'
import type { LabelCode } from './label-reading.ts'

const DOTS_PER_MM = 300 / 25.4

/** A code as a printer of 300 dots to the inch sets it, with its quiet zone. */
export function printedCode(spec: QrSpec): LabelCode {
  const { size, dark } = qrMatrix(spec)
  const module = spec.moduleMm * DOTS_PER_MM
  const margin = Math.round(4 * module)
  const side = Math.round(size * module)
  const width = side + 2 * margin
  const data = new Uint8ClampedArray(width * width * 4).fill(255)
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (dark(Math.floor(y / module), Math.floor(x / module))) {
        const at = ((y + margin) * width + x + margin) * 4
        data.fill(0, at, at + 3)
      }
  const picture = { data, width, height: width }
  return { text: spec.text, modules: size, picture, code: { left: margin, top: margin, side } }
}
