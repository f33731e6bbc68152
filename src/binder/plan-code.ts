import type { QrSpec } from './blocks.ts'
import { LEAST_MODULE_MM, modulesOf, sizedCode } from './label-code.ts'
import type { CodeWish } from './label-code.ts'
import { isPresent } from '../base/absent.ts'
import { qrSize, qrVersion } from '../domain/qr/qr-size.ts'
import { QR } from '../reference/qr.ts'

/** The largest version whose code, quiet zone included, stands in a room. */
function mostVersion(roomMm: number, { moduleMm = LEAST_MODULE_MM, quietModules = QR.quietModules }: CodeWish): number {
  const modules = Math.floor(roomMm / moduleMm + 1e-9) - 2 * quietModules
  return Math.min(QR.versions, Math.floor((modules - modulesOf(0)) / QR.modulesPerVersion))
}

/**
 * Whether a plan fits the code that a room has. Level M at least: level Q would hold a quarter less of it, and of what stands on a label the plan
 * is what may be lost, since the link codes and the words beside them say what matters.
 */
export function planFits(text: string, roomMm: number, wish: CodeWish = {}): boolean {
  const size = qrVersion(text, 'M')
  return isPresent(size) && size.version <= mostVersion(roomMm, wish)
}

/** At level Q where the text fits so, else at level M; the smallest version for it, with modules as large as fit. */
export function planCode(text: string, roomMm: number, wish: CodeWish = {}): QrSpec | undefined {
  const strong = qrVersion(text, 'Q')
  const level = isPresent(strong) && strong.version <= mostVersion(roomMm, wish) ? 'Q' : 'M'
  return sizedCode({ text, level, version: qrSize(text, level).version }, roomMm, { ...wish, readFromMm: 0 })
}
