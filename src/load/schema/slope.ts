import type { z } from 'zod'
import { roundedText } from '../../units/show.ts'
import { field, taken, wrong } from './field.ts'

const FORM = /^\d+(?:\.\d+)?\s*%$|^\d+(?:\.\d+)?\s*:\s*\d+(?:\.\d+)?$|^(?:flat|level)$/u
const DEGREES = /^(\d+(?:\.\d+)?)\s*(?:°|deg|degrees?)$/iu

/** A slope in percent or as run to rise. One in degrees is told with its percent: 10° are 17.6 %. */
export function slope(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, { type: ['string', 'number'], pattern: FORM.source }, value => {
    const written = String(value).trim()
    if (FORM.test(written)) return taken(written)
    const degrees = Number(DEGREES.exec(written)?.[1] ?? NaN)
    const percent = degrees < 90 ? `${roundedText(Math.tan((degrees * Math.PI) / 180) * 100, 1)} %` : undefined
    const expected = percent === undefined ? 'a slope' : 'a slope in percent; degrees are another measure'
    return wrong('file/not-understood', { expected, example: percent ?? example }, percent)
  })
}
