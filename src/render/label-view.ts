import type { Label, LabelSheet } from '../binder/pages.ts'
import { PLAIN_LABEL } from '../binder/label-size.ts'
import type { QrSpec } from '../binder/blocks.ts'
import { fitLabel } from './label-fit.ts'
import type { LabelFit, LabelWords } from './label-fit.ts'

/** A smaller label is drawn on the plain one's scale and made smaller as a whole, but no smaller than type that can be read at an open box. */
const SMALLEST = 0.62

export interface LabelView extends LabelFit {
  /** What the drawing is made smaller by; all other measures are before that. */
  readonly zoom: number
  readonly widthMm: number
  readonly heightMm: number
  readonly qr: QrSpec
  readonly spare?: QrSpec
  readonly plan?: { readonly code: QrSpec; readonly heightMm: number }
}

const PLAIN_CUT: NonNullable<LabelSheet['cut']> = { ...PLAIN_LABEL, single: false }

export function labelView(label: Label, words: LabelWords, cut = PLAIN_CUT): LabelView {
  const linkMm = cut.heightMm - (cut.planMm ?? 0)
  const zoom = Math.min(
    1,
    Math.max(SMALLEST, Math.min(cut.widthMm / PLAIN_LABEL.widthMm, linkMm / PLAIN_LABEL.heightMm))
  )
  const drawn = (qr: QrSpec): QrSpec => ({ ...qr, moduleMm: qr.moduleMm / zoom, sideMm: qr.sideMm / zoom })
  const [widthMm, heightMm] = [cut.widthMm / zoom, cut.heightMm / zoom]
  const planMm = (cut.planMm ?? 0) / zoom
  const qr = drawn(label.qr)
  const spare = label.spare && drawn(label.spare)
  const room = { widthMm, heightMm: heightMm - planMm, planMm, zoom, largeMm: qr.sideMm, spareMm: spare?.sideMm ?? 0 }
  const fit = fitLabel(label, room, words)
  return {
    ...fit,
    zoom,
    widthMm,
    heightMm,
    qr,
    ...(spare && fit.hasSpare ? { spare } : {}),
    ...(label.plan ? { plan: { code: drawn(label.plan.code), heightMm: planMm } } : {})
  }
}
