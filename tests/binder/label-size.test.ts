import { describe, expect, it } from 'vitest'
import { PLAIN_LABEL, labelCodes, leastLabel, parseLabelSize } from '../../src/binder/label-size.ts'

const URL = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const LONG = `HTTPS://A-LONG-NAME-OF-A-HOST.EXAMPLE.ORG/WATERING/SITES/B/7KQ3F9X/`

describe('a label size', () => {
  it.each([
    ['90x60mm', 90, 60],
    ['90 x 60 mm', 90, 60],
    ['90 mm × 60 mm', 90, 60],
    ['3.5x2in', 88.9, 50.8],
    ['3.5in x 50mm', 88.9, 50]
  ])('is read as it is written: %s', (text, widthMm, heightMm) => {
    const size = parseLabelSize(text)
    expect(size?.widthMm).toBeCloseTo(widthMm, 6)
    expect(size?.heightMm).toBeCloseTo(heightMm, 6)
  })

  it.each(['90x60', '90', 'x60mm', '90x60cm', '-90x60mm', '90x60mm extra', ''])(
    'is not guessed where it has no unit or no two sides: "%s"',
    text => {
      expect(parseLabelSize(text)).toBeUndefined()
    }
  )
})

describe('the codes of a label', () => {
  it.each([
    PLAIN_LABEL,
    { widthMm: 90, heightMm: 60 },
    { widthMm: 120, heightMm: 60 },
    { widthMm: 190, heightMm: 120 }
  ])('have modules that phones read, and leave the tag its room: $widthMm × $heightMm mm', size => {
    const codes = labelCodes(URL, size)
    for (const one of [codes?.qr, codes?.spare]) if (one) expect(one.moduleMm).toBeGreaterThanOrEqual(0.5)
    expect(2 * (codes?.qr.sideMm ?? Infinity)).toBeLessThanOrEqual(size.widthMm * 0.51)
    expect(codes?.qr.sideMm).toBeLessThanOrEqual(size.heightMm * 0.5)
  })

  it.each([URL, LONG])('fit the least size that is told, and nothing smaller: %s', url => {
    const least = leastLabel(url)
    expect(labelCodes(url, least)).toBeDefined()
    expect(labelCodes(url, { ...least, widthMm: least.widthMm - 1 })).toBeUndefined()
    expect(labelCodes(url, { ...least, heightMm: least.heightMm - 1 })).toBeUndefined()
  })
})
