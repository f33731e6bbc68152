import { describe, expect, it } from 'vitest'
import type { QrSpec } from '../../src/binder/blocks.ts'
import { qrMatrix, qrSvg } from '../../src/render/qr-svg.ts'
import { byJsqr, byZxing, photocopy } from '../support/read-codes.ts'
import type { Picture } from '../support/read-codes.ts'
import { LABELS_METRIC, LABELS_US } from '../look/sheets.ts'

const SPECS: readonly QrSpec[] = [
  ...[...LABELS_METRIC.labels, ...LABELS_US.labels].map(label => label.qr),
  { text: 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/', level: 'L', moduleMm: 0.5, version: 2, sideMm: 16.5 },
  { text: 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/', level: 'Q', moduleMm: 0.5, version: 3, sideMm: 18.5 }
]

/** The bars of the path that is printed, filled by hand: what a printer would put on the sheet. */
function pixelsOf(svg: string, scale: number): Picture {
  const side = Number(/viewBox="0 0 (\d+)/u.exec(svg)?.[1])
  const width = side * scale
  const data = new Uint8ClampedArray(width * width * 4).fill(255)
  const bars = / d="(M\d+ \d+h\d+v1h-\d+z[^"]*)" fill="#000"/u.exec(svg)?.[1] ?? ''
  for (const [, x, y, length] of bars.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/gu)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1) {
      const from = (row * width + Number(x) * scale) * 4
      for (let at = from; at < from + Number(length) * scale * 4; at += 4) data.fill(0, at, at + 3)
    }
  }
  return { data, width, height: width }
}

describe('a drawn code', () => {
  it.each(SPECS)('is read back by two readers: $text, level $level, version $version', async spec => {
    const picture = pixelsOf(qrSvg(spec), 6)
    expect(await byZxing(picture)).toEqual([spec.text])
    expect(await byJsqr(picture)).toEqual([spec.text])
  })

  it('is read from a grey photocopy', async () => {
    const [spec] = SPECS
    expect(await byZxing(photocopy(pixelsOf(qrSvg(spec as QrSpec), 8)))).toEqual([spec?.text])
  })

  it.each(SPECS)('has four light modules on every side, and is as large as the plan says: $sideMm mm', spec => {
    const { size } = qrMatrix(spec)
    const svg = qrSvg(spec)
    expect(size).toBe(17 + 4 * spec.version)
    expect(svg).toContain(`viewBox="0 0 ${size + 8} ${size + 8}"`)
    expect(Number(/width="([\d.]+)mm"/u.exec(svg)?.[1])).toBeCloseTo(spec.sideMm, 1)
    const columns = [...svg.matchAll(/M(\d+) (\d+)h(\d+)v1/gu)].flatMap(([, x, , length]) => [
      Number(x),
      Number(x) + Number(length)
    ])
    expect(Math.min(...columns)).toBe(4)
    expect(Math.max(...columns)).toBe(size + 4)
  })

  it('of a text that does not fit its version is refused loudly', () => {
    expect(() => qrSvg({ ...(SPECS[0] as QrSpec), version: 1 })).toThrow()
  })
})
