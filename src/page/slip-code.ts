/// <reference lib="dom" />
import { create } from 'qrcode'

/* Draws the slip as a code on the screen. It is a file of its own, since few visits need it; the worker keeps it with the pages. */

/** Light modules on each side. ISO/IEC 18004:2024, quiet zone of four modules. */
const QUIET = 4

export interface SlipCode {
  /** Side with its quiet zone, in modules. */
  readonly side: number
  /** The dark modules, as the path of a drawing. */
  readonly path: string
}

/** Undefined where the text is longer than a code can hold. */
export type DrawSlip = (text: string) => SlipCode | undefined

const draw: DrawSlip = text => {
  try {
    const { modules } = create(text, { errorCorrectionLevel: 'L' })
    let path = ''
    for (let row = 0; row < modules.size; row += 1)
      for (let column = 0; column < modules.size; column += 1)
        if (modules.get(row, column)) path += `M${column + QUIET} ${row + QUIET}h1v1h-1z`
    return { side: modules.size + 2 * QUIET, path }
  } catch {
    return undefined
  }
}

;(window as unknown as { underlidSlip: DrawSlip }).underlidSlip = draw
