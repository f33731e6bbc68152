import { Refusal } from '../base/refusal.ts'
import { TALLEST_LABEL_MM, WIDEST_LABEL_MM, labelCodes, leastLabel } from '../binder/label-size.ts'
import type { LabelSize } from '../binder/label-size.ts'
import { tagUrl } from '../binder/tag-url.ts'
import { QR_LEAST_MODULE_M } from '../reference/qr.ts'

/** Any tag is as long as another, so one stands for all. */
const SOME_TAG = '7KQ3F9X'

/** A label whose code would print finer than phones read, or that no sheet takes, is not printed: the size that would do is told. */
export function refuseSmallLabels(publicAddress: string, size: LabelSize): void {
  const { widthMm, heightMm } = size
  const written = `${rounded(widthMm)} × ${rounded(heightMm)} mm`
  if (widthMm > WIDEST_LABEL_MM || heightMm > TALLEST_LABEL_MM)
    throw new Refusal(
      `A label of ${written} does not fit a sheet with its crop marks.`,
      `At most ${WIDEST_LABEL_MM} × ${TALLEST_LABEL_MM} mm fit.`
    )
  const url = tagUrl(publicAddress, SOME_TAG)
  if (labelCodes(url, size)) return
  const least = leastLabel(url)
  throw new Refusal(
    `On a label of ${written} the squares of the code would be finer than ${QR_LEAST_MODULE_M * 1000} mm, which phones do not read well.`,
    `This would do: --label-size ${Math.max(least.widthMm, Math.ceil(widthMm))}x${Math.max(least.heightMm, Math.ceil(heightMm))}mm. A shorter public address makes a coarser code.`
  )
}

const rounded = (mm: number): string => String(Math.round(mm * 10) / 10)
