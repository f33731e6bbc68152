import { Refusal } from '../base/refusal.ts'
import { LEAST_MODULE_MM } from '../binder/label-code.ts'
import type { CodeWish } from '../binder/label-code.ts'
import { PLAIN_LABEL, PLAN_LABEL, parseLabelSize } from '../binder/label-size.ts'
import type { LabelSize } from '../binder/label-size.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import { QR } from '../reference/qr.ts'
import { parseQuantity } from '../units/quantity.ts'

export interface LabelOptions {
  readonly labelSize?: string
  readonly labelSheet?: string
  readonly planCode?: boolean
  readonly readFrom?: string
  readonly module?: string
  readonly quietZone?: string
}

/** Wider than that a quiet zone only takes room from the code. */
const MOST_QUIET = 10

/** Nothing where the plain labels are meant. */
export function labelWishOf(options: LabelOptions): { labelWish?: LabelWish } {
  const { labelSize, labelSheet, planCode = false, readFrom, module, quietZone } = options
  const single = labelSheet === 'single'
  if ([labelSize, readFrom, module, quietZone].every(one => one === undefined) && !single && !planCode) return {}
  const size = labelSize === undefined ? (planCode ? PLAN_LABEL : PLAIN_LABEL) : sizeOf(labelSize)
  const codes = codesOf(options)
  return {
    labelWish: {
      size,
      single,
      ...(Object.keys(codes).length > 0 ? { codes } : {}),
      ...(planCode ? { planCode } : {})
    }
  }
}

function sizeOf(text: string): LabelSize {
  const size = parseLabelSize(text)
  if (size) return size
  throw new Refusal(
    `"${text}" is not the size of a label.`,
    'Write width and height with their unit: --label-size 90x60mm, or 5x3in'
  )
}

function codesOf({ readFrom, module, quietZone }: LabelOptions): CodeWish {
  const moduleMm = module === undefined ? undefined : millimeters(module, '--module 0.6mm')
  if (moduleMm !== undefined && moduleMm < LEAST_MODULE_MM)
    throw new Refusal(
      `Phones do not read squares of ${module} well.`,
      `At least ${LEAST_MODULE_MM} mm: --module ${LEAST_MODULE_MM}mm`
    )
  return {
    ...(readFrom === undefined ? {} : { readFromMm: millimeters(readFrom, '--read-from 40cm') }),
    ...(moduleMm === undefined ? {} : { moduleMm }),
    ...(quietZone === undefined ? {} : { quietModules: quietOf(quietZone) })
  }
}

function quietOf(text: string): number {
  const count = Number(text)
  if (Number.isInteger(count) && count >= QR.quietModules && count <= MOST_QUIET) return count
  throw new Refusal(
    `A quiet zone of "${text}" squares is not made.`,
    `The standard (ISO/IEC 18004) wants ${QR.quietModules}; write a whole number from ${QR.quietModules} to ${MOST_QUIET}: --quiet-zone ${QR.quietModules}`
  )
}

function millimeters(text: string, example: string): number {
  const parsed = parseQuantity(text, 'length')
  if (parsed.ok && parsed.value.si > 0) return parsed.value.si * 1000
  throw new Refusal(`"${text}" is not a length with its unit.`, `Write it like this: ${example}`)
}
