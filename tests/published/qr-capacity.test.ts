import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../src/base/absent.ts'
import { QR_LEVELS, qrVersion, qrVersionOfLength } from '../../src/domain/qr/qr-size.ts'
import type { QrMode } from '../../src/domain/qr/qr-size.ts'
import { calc } from '../support/calc.ts'
import { expectClose } from '../support/close.ts'

function versionOf(count: number, mode: QrMode, level: (typeof QR_LEVELS)[number]): number {
  const size = qrVersionOfLength(count, mode, level)
  return isPresent(size) ? size.version : 41
}

/** Version, modules, then characters at L, M, Q and H. */
type Row = readonly [number, number, number, number, number, number]

function expectCapacity(mode: QrMode, [version, modules, ...counts]: Row): void {
  QR_LEVELS.forEach((level, index) => {
    const count = counts[index] as number
    const size = qrVersionOfLength(count, mode, level)
    expect(isPresent(size) && size, `${count} at ${level}`).toEqual({ version, modules })
    expect(versionOf(count + 1, mode, level), `${count + 1} at ${level}`).toBe(version + 1)
  })
}

describe('QR byte capacity, ISO/IEC 18004 in a laser marker’s manual and a code table, all measured again with qrencode 4.1.1 (14 versions, 70 values)', () => {
  it.each([
    [1, 21, 17, 14, 11, 7],
    [2, 25, 32, 26, 20, 14],
    [3, 29, 53, 42, 32, 24],
    [4, 33, 78, 62, 46, 34],
    [5, 37, 106, 84, 60, 44],
    [6, 41, 134, 106, 74, 58],
    [7, 45, 154, 122, 86, 64],
    [8, 49, 192, 152, 108, 84],
    [9, 53, 230, 180, 130, 98],
    [10, 57, 271, 213, 151, 119],
    [15, 77, 520, 412, 292, 220],
    [20, 97, 858, 666, 482, 382],
    [25, 117, 1273, 997, 715, 535],
    [40, 177, 2953, 2331, 1663, 1273]
  ] as const)('version %d, %d modules: %d, %d, %d, %d bytes, and one more needs the next', (...row) => {
    expectCapacity('byte', row)
  })
})

describe('QR alphanumeric and numeric capacity (P19 and its neighbors; 5 rows, 20 values)', () => {
  it.each([
    [1, 21, 25, 20, 16, 10],
    [4, 33, 114, 90, 67, 50],
    [10, 57, 395, 311, 221, 174]
  ] as const)('version %d, %d modules: %d, %d, %d, %d letters of the upper-case set', (...row) => {
    expectCapacity('alphanumeric', row)
  })

  it.each([
    [1, 21, 41, 34, 27, 17],
    [4, 33, 187, 149, 111, 82]
  ] as const)('version %d, %d modules: %d, %d, %d, %d digits', (...row) => {
    expectCapacity('numeric', row)
  })
})

describe('smallest version for a payload, measured with qrencode in byte mode (8 payloads, 32 values)', () => {
  it.each([
    [26, 2, 2, 3, 4],
    [40, 3, 3, 4, 5],
    [60, 4, 4, 5, 7],
    [100, 5, 6, 8, 10],
    [150, 7, 8, 10, 12],
    [152, 7, 8, 11, 12],
    [214, 9, 11, 13, 15],
    [300, 11, 13, 16, 18]
  ])('%d bytes: version %d, %d, %d, %d at L, M, Q, H', (count, ...versions) => {
    expect(QR_LEVELS.map(level => versionOf(count, 'byte', level))).toEqual(versions)
  })
})

describe('printed size (P18; 13 values)', () => {
  it('P18: 40 bytes at Q are version 4, 33 modules; at 30 mm a module is 0.909 mm and the whole 37.27 mm, within 0.1 %', () => {
    const size = calc('qr-size', { length: '40', level: 'Q', width: '30 mm' })
    expect(size).toMatchObject({ version: 4, modules: 33 })
    expectClose(size['module'] as number, 0.909, 0.1)
    expectClose(size['full-width'] as number, 37.27, 0.1)
  })

  it('a version 3 symbol of 30 mm has modules of about 1.03 mm (a printer’s size guide), within 1 %', () => {
    expectClose(calc('qr-size', { length: '32', level: 'Q', width: '30 mm' })['module'] as number, 1.03, 1)
  })

  it('an upper-case address of 34 characters is one version smaller than the same in lower case, at every level it was measured at', () => {
    const lower = `https://example.org/b/${'a'.repeat(12)}`
    const modules = (text: string) =>
      QR_LEVELS.map(level => {
        const size = qrVersion(text, level)
        return isPresent(size) ? size.modules : 0
      })
    expect(lower).toHaveLength(34)
    expect(modules(lower.toUpperCase())).toEqual([25, 25, 29, 29])
    expect(modules(lower)).toEqual([29, 29, 33, 33])
  })

  it('a text that no code can hold is absent with a reason', () => {
    expect(isAbsent(qrVersionOfLength(1274, 'byte', 'H'))).toBe(true)
  })
})
