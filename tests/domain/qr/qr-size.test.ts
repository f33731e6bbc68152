import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { QR_LEVELS, printedQr, qrSize, qrVersion, qrVersionOfLength } from '../../../src/domain/qr/qr-size.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const modules = (text: string, level: (typeof QR_LEVELS)[number]) => {
  const size = qrVersion(text, level)
  return isPresent(size) ? size.modules : Infinity
}

describe('the smallest code for a text', () => {
  it('never shrinks with a longer text or a stronger level', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1200 }), fc.integer({ min: 1, max: 1200 }), (one, other) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)]
        expect(modules('a'.repeat(long), 'Q')).toBeGreaterThanOrEqual(modules('a'.repeat(short), 'Q'))
        const levels = QR_LEVELS.map(level => modules('a'.repeat(short), level))
        expect(levels).toEqual([...levels].sort((a, b) => a - b))
      }),
      { numRuns: 20 }
    )
  })

  it('for an issued tag’s address in upper case is version 3 at Q and 2 at M', () => {
    expect(qrSize('HTTPS://EXAMPLE.ORG/B/7KQ3F9X/', 'Q')).toEqual({ version: 3, modules: 29 })
    expect(qrSize('HTTPS://EXAMPLE.ORG/B/7KQ3F9X/', 'M')).toEqual({ version: 2, modules: 25 })
  })

  it('is absent for an empty text and for one that no code holds, and a throw where the program wrote it', () => {
    expect(isAbsent(qrVersion('', 'L'))).toBe(true)
    expect(isAbsent(qrVersion('a'.repeat(2954), 'L'))).toBe(true)
    expect(() => qrSize('a'.repeat(2954), 'L')).toThrow('longer than a QR code can hold')
    expect(isPresent(qrVersionOfLength(2953, 'byte', 'L'))).toBe(true)
  })
})

describe('the printed code', () => {
  it('carries four modules of quiet zone on each side and reads from ten times its width', () => {
    expect(printedQr(25, 0.025)).toEqual({
      moduleM: expect.closeTo(0.001, 12),
      fullWidthM: expect.closeTo(0.033, 12),
      readFromM: expect.closeTo(0.25, 12),
      surelyFromM: expect.closeTo(0.1667, 4)
    })
  })

  it('says when a module is under half a millimeter, and not exactly at it', () => {
    const at = (width: string) => calc('qr-size', { length: '40', level: 'Q', width })['module-large-enough']
    expect([at('16.4 mm'), at('16.5 mm')]).toEqual([false, true])
  })

  it('wants the text or its length, one of them', () => {
    const rest = { level: 'Q', width: '30 mm' }
    expect(calcOrAbsent('qr-size', rest)).toMatch(/give the text/u)
    expect(calcOrAbsent('qr-size', { ...rest, text: 'A', length: '1' })).toBe('give the text or its length, not both')
    expect(calcOrAbsent('qr-size', { ...rest, length: '0' })).toMatch(/give the text/u)
    expect(calcOrAbsent('qr-size', { ...rest, length: '5000' })).toMatch(/longer than a QR code can hold/u)
    expect(calc('qr-size', { ...rest, text: 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/' })['version']).toBe(3)
  })
})
