import type { QrSpec } from './blocks.ts'
import { qrSize } from '../domain/qr/qr-size.ts'
import { QR } from '../reference/qr.ts'

/**
 * 0.5 mm modules, the least that phones want, make a symbol of 36 mm at version 14: read from 35 cm by the 10 : 1 rule of thumb. Of the same
 * width, a high version is read more often than a low one where dirt covers it: its finder marks take a smaller share of the symbol, and a
 * code whose finder mark is gone is not found at all (tests/bench/label-damage.bench.ts).
 */
const LABEL_CODE = { version: 14, moduleMm: 0.5 } as const
/** The smaller codes of a label, for where both large ones have lost a finder mark. */
const SPARE_CODE = { version: 10, moduleMm: 0.5 } as const

/** Upper case throughout, so that the code prints in the smaller alphanumeric mode. */
export function tagUrl(publicAddress: string, tag: string): string {
  return `${publicAddress.toUpperCase()}/B/${tag}/`
}

/** Dirt under a lid is the rule, so the strongest level is used while the text fits the version of labels; a long address takes level Q. */
export function tagQr(text: string): QrSpec {
  return codeOf(text, LABEL_CODE)
}

export function spareQr(text: string): QrSpec {
  return codeOf(text, SPARE_CODE)
}

function codeOf(text: string, least: { readonly version: number; readonly moduleMm: number }): QrSpec {
  const level = qrSize(text, 'H').version <= least.version ? 'H' : 'Q'
  const version = Math.max(least.version, qrSize(text, level).version)
  const modules = QR.modulesPerVersion * version + QR.modulesBase
  return { text, level, moduleMm: least.moduleMm, version, sideMm: least.moduleMm * (modules + 2 * QR.quietModules) }
}
