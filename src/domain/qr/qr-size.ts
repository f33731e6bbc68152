import { create } from 'qrcode'
import type { QRCodeSegment } from 'qrcode'
import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { QR, QR_DISTANCE_PER_WIDTH, QR_LEAST_MODULE_M, QR_SURE_MARGIN } from '../../reference/qr.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { measure } from '../figures.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'

export const QR_LEVELS = ['L', 'M', 'Q', 'H'] as const
export type QrLevel = (typeof QR_LEVELS)[number]
export const QR_MODES = ['byte', 'alphanumeric', 'numeric'] as const
export type QrMode = (typeof QR_MODES)[number]

export interface QrSize {
  readonly version: number
  /** Modules on a side, without the quiet zone. */
  readonly modules: number
}

/** The version does not depend on the mask, and to choose the best one is most of the work of making a symbol. */
const ANY_MASK = 0

/** The smallest symbol for a text; absent where it is longer than a code can hold. An upper-case address takes the smaller alphanumeric mode. */
export function qrVersion(text: string, level: QrLevel): Maybe<QrSize> {
  return sized(() => create(text, { errorCorrectionLevel: level, maskPattern: ANY_MASK }).version)
}

/** For texts that the program itself writes, such as a tag's address; throws on one that no code can hold. */
export function qrSize(text: string, level: QrLevel): QrSize {
  const size = qrVersion(text, level)
  if (isAbsent(size)) throw new Error(size.reason)
  return size
}

/** The smallest symbol for so many characters of one mode: 40 bytes at level Q are version 4, 33 modules. */
export function qrVersionOfLength(count: number, mode: QrMode, level: QrLevel): Maybe<QrSize> {
  return sized(() => create([segmentOf(count, mode)], { errorCorrectionLevel: level, maskPattern: ANY_MASK }).version)
}

function segmentOf(count: number, mode: QrMode): QRCodeSegment {
  if (mode === 'byte') return { mode, data: new Uint8Array(count).fill(97) }
  return mode === 'numeric' ? { mode, data: '1'.repeat(count) } : { mode, data: 'A'.repeat(count) }
}

export interface PrintedQr {
  readonly moduleM: number
  /** With four modules of quiet zone on each side. */
  readonly fullWidthM: number
  /** From which it reads by the ten-to-one rule, and with half as much again in hand. */
  readonly readFromM: number
  readonly surelyFromM: number
}

/** A symbol printed so wide, quiet zone not counted: 33 modules at 30 mm are 0.909 mm each and 37.27 mm with the quiet zone. */
export function printedQr(modules: number, symbolWidthM: number): PrintedQr {
  const moduleM = symbolWidthM / modules
  return {
    moduleM,
    fullWidthM: moduleM * (modules + 2 * QR.quietModules),
    readFromM: symbolWidthM * QR_DISTANCE_PER_WIDTH,
    surelyFromM: (symbolWidthM * QR_DISTANCE_PER_WIDTH) / QR_SURE_MARGIN
  }
}

export const qrSizeCard: Calculation = {
  name: 'qr-size',
  title: 'Size of a QR code',
  does: 'Gives the version and modules of the smallest code for a text, its printed width with the quiet zone, and how far it reads.',
  inputs: {
    text: { kind: { is: 'text' }, does: 'text in the code', optional: 'a length and a mode' },
    length: { kind: { is: 'count' }, does: 'number of characters', optional: 'counted from the text' },
    mode: { kind: { is: 'choice', of: QR_MODES }, does: 'mode of those characters', optional: 'byte' },
    level: { kind: { is: 'choice', of: QR_LEVELS }, does: 'error correction level' },
    width: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'printed width of the symbol, quiet zone not counted'
    }
  },
  outputs: {
    version: { does: 'version, 1 to 40', unit: '' },
    modules: { does: 'modules on a side', unit: '' },
    module: { does: 'width of one module', unit: 'mm' },
    'full-width': { does: 'width with the quiet zone', unit: 'mm' },
    'reads-from': { does: 'distance by the ten-to-one rule', unit: 'm' },
    'surely-from': { does: 'distance with half as much again in hand', unit: 'm' },
    'module-large-enough': { does: 'whether a module is at least 0.5 mm', unit: '' }
  },
  sources: ['iso-18004', 'common-practice'],
  limits: 'Distance and the 0.5 mm module are rules of thumb, not of the standard. A dirty code reads from nearer.',
  run: inputs => {
    const size = sizeOf(inputs)
    if (isAbsent(size)) return size
    const width = numberOf(inputs, 'width')
    const fault = notPositive({ width })
    if (fault) return fault
    const { version, modules } = size
    const printed = printedQr(modules, width)
    const mm = (meters: number) => measure(meters * 1000, 4, 'mm')
    return {
      value: {
        version,
        modules,
        module: printed.moduleM * 1000,
        'full-width': printed.fullWidthM * 1000,
        'reads-from': printed.readFromM,
        'surely-from': printed.surelyFromM,
        'module-large-enough': printed.moduleM >= QR_LEAST_MODULE_M
      },
      steps: [
        `version ${version}: 4 × ${version} + 17 = ${modules} modules (ISO/IEC 18004)`,
        `${mm(width)} / ${modules} = ${mm(printed.moduleM)} a module`,
        `${mm(printed.moduleM)} × (${modules} + 2 × ${QR.quietModules}) = ${mm(printed.fullWidthM)} with the quiet zone`,
        `${mm(width)} × ${QR_DISTANCE_PER_WIDTH} = ${measure(printed.readFromM, 3, 'm')}; / ${QR_SURE_MARGIN} = ${measure(printed.surelyFromM, 3, 'm')} to be sure (common practice, no source)`
      ]
    }
  },
  example: {
    inputs: { length: '40', level: 'Q', width: '30 mm' },
    outputs: {
      version: 4,
      modules: 33,
      module: 0.909,
      'full-width': 37.27,
      'reads-from': 0.3,
      'surely-from': 0.2,
      'module-large-enough': true
    }
  }
}

function sizeOf(inputs: CalculationInputs): Maybe<QrSize> {
  const level = (optionalText(inputs, 'level') ?? 'Q') as QrLevel
  const text = optionalText(inputs, 'text')
  const count = optionalNumber(inputs, 'length')
  if (text !== undefined && count !== undefined) return absent('give the text or its length, not both')
  if (text !== undefined && text !== '') return qrVersion(text, level)
  if (count === undefined || count < 1) return absent('give the text, or the number of its characters')
  return qrVersionOfLength(count, (optionalText(inputs, 'mode') ?? 'byte') as QrMode, level)
}

/** The library throws where nothing fits; here that is an absent value. */
function sized(version: () => number): Maybe<QrSize> {
  try {
    const number = version()
    return { version: number, modules: QR.modulesPerVersion * number + QR.modulesBase }
  } catch {
    return absent('the text is longer than a QR code can hold at this level')
  }
}
