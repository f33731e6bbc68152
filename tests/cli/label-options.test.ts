import { describe, expect, it } from 'vitest'
import { labelReach, refuseSmallLabels } from '../../src/build/label-room.ts'
import { labelCodes } from '../../src/binder/label-size.ts'
import { readsFromMm } from '../../src/binder/label-code.ts'
import { labelWishOf } from '../../src/cli/label-options.ts'
import type { LabelOptions } from '../../src/cli/label-options.ts'

const ADDRESS = 'HTTPS://EXAMPLE.ORG'
const URL = `${ADDRESS}/B/7KQ3F9X/`

function tried(options: LabelOptions): string {
  try {
    const { labelWish } = labelWishOf(options)
    if (labelWish) refuseSmallLabels(ADDRESS, labelWish)
    return ''
  } catch (error) {
    return String(error)
  }
}

describe('what is asked of labels', () => {
  it('is nothing where the plain ones are meant', () => {
    expect(labelWishOf({})).toEqual({})
    expect(labelWishOf({ labelSheet: 'sheet' })).toEqual({})
  })

  it('is read with its units', () => {
    expect(labelWishOf({ readFrom: '16 in', module: '0.6 mm', quietZone: '5' }).labelWish).toMatchObject({
      size: { widthMm: 180, heightMm: 84 },
      codes: { readFromMm: 406.4, moduleMm: 0.6, quietModules: 5 }
    })
    expect(labelWishOf({ planCode: true }).labelWish).toMatchObject({
      size: { widthMm: 180, heightMm: 130 },
      planCode: true
    })
    expect(labelWishOf({ planCode: true, labelSize: '100x110mm' }).labelWish?.size).toEqual({
      widthMm: 100,
      heightMm: 110
    })
  })

  it.each([
    [{ readFrom: '40' }, 'not a length with its unit'],
    [{ readFrom: '-40 cm' }, 'not a length with its unit'],
    [{ readFrom: '2 L' }, 'not a length with its unit'],
    [{ module: '0.4mm' }, 'do not read squares of 0.4mm well'],
    [{ quietZone: '3' }, 'wants 4'],
    [{ quietZone: '4.5' }, 'wants 4'],
    [{ quietZone: '11' }, 'from 4 to 10'],
    [{ labelSize: '90x60' }, 'with their unit'],
    [{ labelSize: '200x60mm' }, 'does not fit a sheet'],
    [{ labelSize: '40x30mm' }, 'This would do: --label-size']
  ] as const)('is refused where it cannot be had: %o', (options, told) => {
    expect(tried(options)).toContain(told)
  })
})

describe('the distance of a label', () => {
  it('is had exactly up to what its codes are read from', () => {
    // 73 modules of 0.5 mm are 36.5 mm wide: 365 mm by the rule of ten to one.
    expect(tried({ readFrom: '365 mm' })).toBe('')
    expect(labelCodes(URL, { widthMm: 180, heightMm: 84 }, { readFromMm: 365 })?.qr).toMatchObject({ version: 14 })
    expect(tried({ readFrom: '366 mm', labelSize: '180x84mm' })).toContain('would not be read from 36.6 cm')
  })

  it('leads to a label that does, which is taken', () => {
    for (const readFrom of ['40 cm', '45 cm', '20 in']) {
      const told = tried({ readFrom })
      const size = /--label-size (\d+x\d+mm)/u.exec(told)?.[1] ?? ''
      expect(tried({ readFrom, labelSize: size }), `${readFrom}: ${told}`).toBe('')
      const wish = labelWishOf({ readFrom, labelSize: size }).labelWish
      const codes = wish && labelCodes(URL, wish.size, wish.codes)
      expect(codes && readsFromMm(codes.qr)).toBeGreaterThanOrEqual(wish?.codes?.readFromMm ?? Infinity)
    }
  })

  it('that no label has is refused without a size', () => {
    const told = tried({ readFrom: '2 m' })
    expect(told).toContain('No label that a sheet takes')
    expect(told).not.toContain('--label-size')
  })

  it('is told for any size', () => {
    expect(labelReach(ADDRESS)).toContain('read from up to 36 cm or 14 in')
    expect(labelReach(ADDRESS, { size: { widthMm: 90, heightMm: 60 }, single: true })).toMatch(
      /read from up to 1[5-9] cm or [67] in/u
    )
  })

  it('and squares and white border that are wished are had, or the size that would do is told', () => {
    const codes = labelCodes(URL, { widthMm: 180, heightMm: 84 }, { moduleMm: 0.8, quietModules: 6 })
    expect(codes?.qr.moduleMm).toBeGreaterThanOrEqual(0.8)
    expect(codes?.qr.quietModules).toBe(6)
    expect(codes?.qr.sideMm).toBeCloseTo((codes?.qr.moduleMm ?? 0) * ((codes?.qr.version ?? 0) * 4 + 17 + 12), 9)
    const told = tried({ module: '1.2mm', labelSize: '120x60mm' })
    const size = /--label-size (\d+x\d+mm)/u.exec(told)?.[1] ?? ''
    expect(tried({ module: '1.2mm', labelSize: size }), told).toBe('')
  })
})
