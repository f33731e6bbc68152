import { Refusal } from '../base/refusal.ts'
import { LEAST_MODULE_MM, reachText } from '../binder/label-code.ts'
import {
  NEAREST_MM,
  TALLEST_LABEL_MM,
  WIDEST_LABEL_MM,
  labelCodes,
  leastLabel,
  planRoomMm,
  withPlanMm
} from '../binder/label-size.ts'
import type { LabelSize } from '../binder/label-size.ts'
import { PLAIN_WISH } from '../binder/make-labels.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import { tagUrl } from '../binder/tag-url.ts'

/** Any tag is as long as another, so one stands for all. */
const SOME_TAG = '7KQ3F9X'

/** A label whose codes do not suit the phone, the distance or the sheet is not printed: the size that would do is told. */
export function refuseSmallLabels(publicAddress: string, wish: LabelWish): void {
  const { size, planCode = false, codes = {} } = wish
  const { widthMm, heightMm } = size
  const written = `${rounded(widthMm)} × ${rounded(heightMm)} mm`
  if (widthMm > WIDEST_LABEL_MM || heightMm > TALLEST_LABEL_MM)
    throw new Refusal(
      `A label of ${written} does not fit a sheet with its crop marks.`,
      `At most ${WIDEST_LABEL_MM} × ${TALLEST_LABEL_MM} mm fit.`
    )
  const url = tagUrl(publicAddress, SOME_TAG)
  const plan = planCode ? planRoomMm(size) : 0
  if (labelCodes(url, { widthMm, heightMm: heightMm - plan }, codes)) return
  const least = leastLabel(url, codes)
  const would = {
    widthMm: Math.max(least.widthMm, Math.ceil(widthMm)),
    heightMm: Math.max(planCode ? withPlanMm(least.heightMm) : least.heightMm, Math.ceil(heightMm))
  }
  throw new Refusal(tooSmall(written, wish), wouldDo(would, wish))
}

function tooSmall(
  written: string,
  { codes: { readFromMm, moduleMm, quietModules } = {}, planCode }: LabelWish
): string {
  const on = `On a label of ${written}${planCode ? ' with its plan code' : ''}`
  if (readFromMm !== undefined)
    return `${on} the code would not be read from ${rounded(readFromMm / 10)} cm: it has to be ${rounded(readFromMm / 10)} mm wide for that, by the rule of ten to one.`
  if (moduleMm !== undefined || quietModules !== undefined)
    return `${on} there is no room for a code of ${rounded(moduleMm ?? LEAST_MODULE_MM)} mm squares with ${quietModules ?? 4} of them left white on each side.`
  return `${on} the squares of the code would be finer than ${LEAST_MODULE_MM} mm, or the code too small for a phone, which is not sharp nearer than ${NEAREST_MM / 10} cm.`
}

function wouldDo({ widthMm, heightMm }: LabelSize, { codes: { readFromMm } = {} }: LabelWish): string {
  if (widthMm > WIDEST_LABEL_MM || heightMm > TALLEST_LABEL_MM)
    return `No label that a sheet takes has room for it${readFromMm === undefined ? '' : ': ask for a shorter distance'}.`
  return `This would do: --label-size ${widthMm}x${heightMm}mm. A shorter public address makes a coarser code.`
}

/** What the codes of such labels are good for, for the end of a print: squares and distance of the large ones. */
export function labelReach(publicAddress: string, wish: LabelWish = PLAIN_WISH): string {
  const { size, planCode = false, codes = {} } = wish
  const room = { ...size, heightMm: size.heightMm - (planCode ? planRoomMm(size) : 0) }
  const found = labelCodes(tagUrl(publicAddress, SOME_TAG), room, codes)
  if (!found) return ''
  return `Lid labels of ${rounded(size.widthMm)} × ${rounded(size.heightMm)} mm: codes of ${found.qr.moduleMm} mm squares, read from up to ${reachText(found.qr, 'metric')} or ${reachText(found.qr, 'us')} (ten to one, a rule of thumb).`
}

const rounded = (mm: number): string => String(Math.round(mm * 10) / 10)
