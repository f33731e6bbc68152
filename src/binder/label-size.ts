import { codeFor, leastSideMm, readsFromMm } from './label-code.ts'
import type { CodeWish } from './label-code.ts'
import type { QrSpec } from './blocks.ts'
import { spareQr, tagQr } from './tag-url.ts'
import { QR } from '../reference/qr.ts'

export interface LabelSize {
  readonly widthMm: number
  readonly heightMm: number
}

/**
 * A lid label is 180 × 84 mm where nothing else is asked for: its diagonal of 199 mm lies inside a round lid of 10 in (254 mm) as well as
 * inside a rectangular one of 12 × 17 in (sizes of valve boxes from memory), and three stand on a sheet of A4 or of Letter.
 */
export const PLAIN_LABEL: LabelSize = { widthMm: 180, heightMm: 84 }
/** With the zone plan as a code below the rest: the diagonal is 222 mm, and two stand on a sheet. */
export const PLAN_LABEL: LabelSize = { widthMm: 180, heightMm: 130 }

/** A sheet of A4 or Letter with room for crop marks takes no larger label. */
export const WIDEST_LABEL_MM = 190
export const TALLEST_LABEL_MM = 250

/** A phone is not sharp from nearer (common practice, no source), so a code that has to be read from nearer is too small. */
export const NEAREST_MM = 150

/** Shares of the label's width and height that a large code and a spare one may take, quiet zone included. */
const LARGE = { width: 0.25, height: 0.48 }
const SPARE = { width: 0.21, height: 0.39 }
/** Where it has to be read from farther, the tag between the codes gives way. */
const LARGE_FAR = { ...LARGE, width: 0.33 }
/** Share of the height that the plan code and its words take where they are wished. */
const PLAN_SHARE = 46 / 130

export interface LabelCodes {
  readonly qr: QrSpec
  /** The same once more below each large code. */
  readonly spare?: QrSpec
}

/** The codes that suit a label, as strong as its room allows; undefined where none that phones read does. */
export function labelCodes(url: string, size: LabelSize, wish: CodeWish = {}): LabelCodes | undefined {
  const plain = { qr: tagQr(url), spare: spareQr(url) }
  if (isPlain(size) && suits(plain.qr, wish)) return plain
  const far = { ...wish, readFromMm: Math.max(NEAREST_MM, wish.readFromMm ?? 0) }
  const shares = wish.readFromMm === undefined ? [LARGE] : [LARGE, LARGE_FAR]
  const qr = shares.map(share => codeFor(plain.qr, roomOf(size, share), far)).find(Boolean)
  const spare = codeFor(plain.spare, roomOf(size, SPARE), { ...wish, readFromMm: 0 })
  return qr && { qr, ...(spare ? { spare } : {}) }
}

const isPlain = ({ widthMm, heightMm }: LabelSize): boolean =>
  widthMm === PLAIN_LABEL.widthMm && heightMm === PLAIN_LABEL.heightMm

function suits(qr: QrSpec, { moduleMm = 0, quietModules = QR.quietModules, readFromMm = 0 }: CodeWish): boolean {
  return qr.moduleMm >= moduleMm && quietModules === QR.quietModules && readsFromMm(qr) >= readFromMm
}

const roomOf = ({ widthMm, heightMm }: LabelSize, share: { readonly width: number; readonly height: number }): number =>
  Math.min(share.width * widthMm, share.height * heightMm)

/** The smallest label whose codes can be read as wished: whole millimeters; larger than any sheet where the wish is. */
export function leastLabel(url: string, wish: CodeWish = {}): LabelSize {
  const far = { ...wish, readFromMm: Math.max(NEAREST_MM, wish.readFromMm ?? 0) }
  const sideMm = leastSideMm(url, tagQr(url).version, far)
  const least = (share: { readonly width: number; readonly height: number }): LabelSize => ({
    widthMm: Math.ceil(sideMm / share.width - 1e-9),
    heightMm: Math.ceil(sideMm / share.height - 1e-9)
  })
  return least(wish.readFromMm === undefined ? LARGE : LARGE_FAR)
}

/** The height that is left for all but the plan code, and what that takes. */
export function planRoomMm({ heightMm }: LabelSize): number {
  return Math.round(heightMm * PLAN_SHARE * 10) / 10
}

/** The height of a label whose part beside the plan code is to be so high. */
export function withPlanMm(heightMm: number): number {
  return Math.ceil(heightMm / (1 - PLAN_SHARE) - 1e-9)
}

const WRITTEN = /^\s*(\d+(?:\.\d+)?)\s*(mm|in)?\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm|in)\s*$/iu
const MM_PER_INCH = 25.4

/** "90x60mm", "90 mm x 60 mm", "3.5x2.4in": width first, with a unit; undefined where it is written otherwise. */
export function parseLabelSize(text: string): LabelSize | undefined {
  const [, width = '', unit, height = '', last = ''] = WRITTEN.exec(text) ?? []
  if (last === '') return undefined
  const mm = (value: string, of: string) => Number(value) * (of.toLowerCase() === 'in' ? MM_PER_INCH : 1)
  return { widthMm: mm(width, unit ?? last), heightMm: mm(height, last) }
}
