import type { QrSpec } from './blocks.ts'
import { qrSize } from '../domain/qr/qr-size.ts'
import { QR } from '../reference/qr.ts'

/**
 * 0.8 mm modules make a symbol of 33 mm at version 6: read from 30 cm by the 10 : 1 rule of thumb, and above the 0.5 mm that phones want. Of
 * the same width, version 6 is read more often than version 3 where dirt covers it: its finder marks take a smaller share of the symbol, and a
 * blot spoils fewer code words at its rim (tests/bench/label-damage.bench.ts).
 */
const MODULE_MM = 0.8
const LABEL_VERSION = 6

/** Upper case throughout, so that the code prints in the smaller alphanumeric mode. */
export function tagUrl(publicAddress: string, tag: string): string {
  return `${publicAddress.toUpperCase()}/B/${tag}/`
}

/** Dirt under a lid is the rule, so the strongest level is used while the text fits the version of labels; a long address takes level Q. */
export function tagQr(text: string): QrSpec {
  const level = qrSize(text, 'H').version <= LABEL_VERSION ? 'H' : 'Q'
  const version = Math.max(LABEL_VERSION, qrSize(text, level).version)
  const modules = QR.modulesPerVersion * version + QR.modulesBase
  return { text, level, moduleMm: MODULE_MM, version, sideMm: MODULE_MM * (modules + 2 * QR.quietModules) }
}
