import type { QrSpec } from './blocks.ts'
import { qrSize } from '../domain/qr/qr-size.ts'
import type { UnitSystem } from '../units/show.ts'
import { QR, QR_DISTANCE_PER_WIDTH, QR_LEAST_MODULE_M } from '../reference/qr.ts'

/** What is asked of the codes of a label beyond its size. */
export interface CodeWish {
  /** Modules at least so wide. */
  readonly moduleMm?: number
  /** Light modules round the symbol; four where nothing is asked for. */
  readonly quietModules?: number
  /** Read from so far by the ten-to-one rule. */
  readonly readFromMm?: number
}

export const LEAST_MODULE_MM = QR_LEAST_MODULE_M * 1000
/** Coarser modules gain nothing at an open box; only where a code is read from afar they go on growing. */
const MOST_MODULE_MM = 1
const STEP_MM = 0.05

/** Width of the symbol without its quiet zone, which the rule of ten to one goes by. */
export function symbolMm({ moduleMm, version }: Pick<QrSpec, 'moduleMm' | 'version'>): number {
  return moduleMm * modulesOf(version)
}

/** How far off a phone reads it: ten times its width (common practice, no source). */
export function readsFromMm(code: Pick<QrSpec, 'moduleMm' | 'version'>): number {
  return symbolMm(code) * QR_DISTANCE_PER_WIDTH
}

/** In whole centimeters or inches, rounded down: "36 cm", "14 in". */
export function reachText(code: Pick<QrSpec, 'moduleMm' | 'version'>, units: UnitSystem): string {
  const [unit, mm] = units === 'us' ? (['in', 25.4] as const) : (['cm', 10] as const)
  return `${Math.floor(readsFromMm(code) / mm + 1e-9)} ${unit}`
}

/** The largest version that fits the room at the least module, then modules as large as fit, in steps of 0.05 mm; undefined where none suits. */
export function codeFor({ text, version: most }: QrSpec, roomMm: number, wish: CodeWish = {}): QrSpec | undefined {
  for (const level of ['H', 'Q'] as const)
    for (let version = most; version >= qrSize(text, level).version; version -= 1) {
      const code = sizedCode({ text, level, version }, roomMm, wish)
      if (code) return code
    }
  return undefined
}

/** With modules as large as fit; undefined where they would be finer, or the symbol smaller, than is wished. */
export function sizedCode(
  of: Pick<QrSpec, 'text' | 'level' | 'version'>,
  roomMm: number,
  { moduleMm: least = LEAST_MODULE_MM, quietModules: quiet = QR.quietModules, readFromMm = 0 }: CodeWish
): QrSpec | undefined {
  const side = modulesOf(of.version) + 2 * quiet
  const moduleMm = Math.min(readFromMm > 0 ? Infinity : MOST_MODULE_MM, fitting(roomMm, side))
  const code = { ...of, moduleMm, sideMm: moduleMm * side }
  if (moduleMm < least - 1e-9 || readsFromMm(code) < readFromMm - 1e-9) return undefined
  return quiet === QR.quietModules ? code : { ...code, quietModules: quiet }
}

/** Side of the smallest code of a text that suits, quiet zone included, up to a version. */
export function leastSideMm(text: string, mostVersion: number, wish: CodeWish = {}): number {
  const { moduleMm: least = LEAST_MODULE_MM, quietModules: quiet = QR.quietModules, readFromMm = 0 } = wish
  const first = qrSize(text, 'Q').version
  const sides = Array.from({ length: Math.max(1, mostVersion - first + 1) }, (_, index) => {
    const modules = modulesOf(first + index)
    const module = Math.max(least, readFromMm / QR_DISTANCE_PER_WIDTH / modules)
    return inSteps(Math.ceil(module / STEP_MM - 1e-9)) * (modules + 2 * quiet)
  })
  return Math.min(...sides)
}

const fitting = (roomMm: number, modules: number): number => inSteps(Math.floor(roomMm / modules / STEP_MM + 1e-9))

const inSteps = (steps: number): number => Math.round(steps * STEP_MM * 100) / 100

export const modulesOf = (version: number): number => QR.modulesPerVersion * version + QR.modulesBase
