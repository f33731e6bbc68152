import type { QrSpec } from './blocks.ts'
import { qrSize } from '../domain/qr/qr-size.ts'

/** 1.1 mm modules make a symbol of 32 mm at version 3: read from 30 cm by the 10 : 1 rule of thumb, and far above the 0.5 mm that phones want. */
const MODULE_MM = 1.1
/** Dirt under a lid is the rule, so the strongest level is used while the symbol stays small (version 6 or below). */
const SMALL_VERSION = 6

/** Upper case throughout, so that the code prints in the smaller alphanumeric mode. */
export function tagUrl(publicAddress: string, tag: string): string {
  return `${publicAddress.toUpperCase()}/B/${tag}/`
}

export function tagQr(text: string): QrSpec {
  const strong = qrSize(text, 'H')
  const level = strong.version <= SMALL_VERSION ? 'H' : 'Q'
  const { version, modules } = level === 'H' ? strong : qrSize(text, 'Q')
  return { text, level, moduleMm: MODULE_MM, version, sideMm: MODULE_MM * (modules + 8) }
}
