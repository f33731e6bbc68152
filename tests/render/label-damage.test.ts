import { beforeAll, describe, expect, it } from 'vitest'
import { tagQr } from '../../src/binder/tag-url.ts'
import { qrMatrix } from '../../src/render/qr-svg.ts'
import type { FoundCode } from '../support/read-codes.ts'
import { readDamaged } from '../support/label-reading.ts'

const TEXT = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const DOTS_PER_MM = 300 / 25.4

/** The code of a lid label as a printer of 300 dots to the inch sets it, with its quiet zone. */
function printed(): { readonly code: FoundCode; readonly modules: number } {
  const spec = tagQr(TEXT)
  const { size, dark } = qrMatrix(spec)
  const module = spec.moduleMm * DOTS_PER_MM
  const margin = Math.round(4 * module)
  const side = Math.round(size * module)
  const width = side + 2 * margin
  const data = new Uint8ClampedArray(width * width * 4).fill(255)
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (dark(Math.floor(y / module), Math.floor(x / module))) {
        const at = ((y + margin) * width + x + margin) * 4
        data.fill(0, at, at + 3)
      }
  return {
    modules: size,
    code: { text: TEXT, picture: { data, width, height: width }, code: { left: margin, top: margin, side } }
  }
}

describe('a lid label with its two codes, damaged', () => {
  let label: ReturnType<typeof printed>
  beforeAll(() => {
    label = printed()
  })
  const read = (share: number, where: 'data area' | 'anywhere', labels: number) =>
    readDamaged([label.code], label.modules, share, where, { labels, seed: 7, thorough: false })

  it('is read every time where 15 % of the data area is gone', async () => {
    expect((await read(0.15, 'data area', 20)).label).toBe(20)
  }, 60_000)

  // Of 60 labels 56 are read, see tests/bench/label-damage.bench.ts.
  it('is read nearly always where 5 % is gone anywhere, finder marks included', async () => {
    expect((await read(0.05, 'anywhere', 25)).label).toBeGreaterThanOrEqual(21)
  }, 60_000)
})
