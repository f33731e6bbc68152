import { spareQr, tagQr } from './tag-url.ts'
import type { QrSpec } from './blocks.ts'
import { qrSize } from '../domain/qr/qr-size.ts'
import { QR, QR_LEAST_MODULE_M } from '../reference/qr.ts'

export interface LabelSize {
  readonly widthMm: number
  readonly heightMm: number
}

/**
 * A lid label is 180 × 84 mm where nothing else is asked for: its diagonal of 199 mm lies inside a round lid of 10 in (254 mm) as well as
 * inside a rectangular one of 12 × 17 in (sizes of valve boxes from memory), and three stand on a sheet of A4 or of Letter.
 */
export const PLAIN_LABEL: LabelSize = { widthMm: 180, heightMm: 84 }

/** A sheet of A4 or Letter with room for crop marks takes no wider label. */
export const WIDEST_LABEL_MM = 190
export const TALLEST_LABEL_MM = 250

/** Shares of the label's width and height that a large code and the third one may take, quiet zone included. */
const LARGE = { width: 0.25, height: 0.48 }
const THIRD = { width: 0.185, height: 0.39 }
const LEAST_MM = QR_LEAST_MODULE_M * 1000
const MOST_MODULE_MM = 1

export interface LabelCodes {
  readonly qr: QrSpec
  readonly spare?: QrSpec
}

/** The codes that suit a label, as strong as its room allows; undefined where not even the smallest prints with modules that phones read. */
export function labelCodes(url: string, size: LabelSize): LabelCodes | undefined {
  const plain = { qr: tagQr(url), spare: spareQr(url) }
  const { widthMm, heightMm } = size
  if (widthMm === PLAIN_LABEL.widthMm && heightMm === PLAIN_LABEL.heightMm) return plain
  const large = fitted(plain.qr, Math.min(LARGE.width * widthMm, LARGE.height * heightMm))
  const third = fitted(plain.spare, Math.min(THIRD.width * widthMm, THIRD.height * heightMm))
  return large && { qr: large, ...(third ? { spare: third } : {}) }
}

/** The smallest label whose codes can be read: whole millimeters, as high as the plain one is to its width. */
export function leastLabel(url: string): LabelSize {
  const sideMm = sideOf(qrSize(url, 'Q').version) * LEAST_MM
  return { widthMm: Math.ceil(sideMm / LARGE.width), heightMm: Math.ceil(sideMm / LARGE.height) }
}

/** The largest version that fits at the least module, then modules as large as fit, in steps of 0.05 mm. */
function fitted({ text, version: most }: QrSpec, roomMm: number): QrSpec | undefined {
  for (const level of ['H', 'Q'] as const)
    for (let version = most; version >= qrSize(text, level).version; version -= 1) {
      const moduleMm = Math.min(MOST_MODULE_MM, Math.floor(roomMm / sideOf(version) / 0.05 + 1e-9) * 0.05)
      if (moduleMm < LEAST_MM - 1e-9) continue
      const rounded = Math.round(moduleMm * 100) / 100
      return { text, level, version, moduleMm: rounded, sideMm: rounded * sideOf(version) }
    }
  return undefined
}

const sideOf = (version: number): number => QR.modulesPerVersion * version + QR.modulesBase + 2 * QR.quietModules

const WRITTEN = /^\s*(\d+(?:\.\d+)?)\s*(mm|in)?\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm|in)\s*$/iu
const MM_PER_INCH = 25.4

/** "90x60mm", "90 mm x 60 mm", "3.5x2.4in": width first, with a unit; undefined where it is written otherwise. */
export function parseLabelSize(text: string): LabelSize | undefined {
  const [, width = '', unit, height = '', last = ''] = WRITTEN.exec(text) ?? []
  if (last === '') return undefined
  const mm = (value: string, of: string) => Number(value) * (of.toLowerCase() === 'in' ? MM_PER_INCH : 1)
  return { widthMm: mm(width, unit ?? last), heightMm: mm(height, last) }
}
