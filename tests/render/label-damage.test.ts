import { describe, expect, it } from 'vitest'
import { spareQr, tagQr } from '../../src/binder/tag-url.ts'
import { readDamaged } from '../support/label-reading.ts'
import { printedCode } from '../support/printed-code.ts'

/*
 * A technician's phone looks some tens of times a second while the hand moves; here it looks six times. The damage stays as it is from look to
 * look, and every code of the label has the whole of it. Rates over more labels: tests/bench/label-damage.bench.ts.
 */

const TEXT = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const codes = [tagQr(TEXT), tagQr(TEXT), spareQr(TEXT), spareQr(TEXT)].map(printedCode)
const wish = { seed: 20260501, looks: 6, quick: true }

describe('a lid label with its code twice large and twice small, damaged', () => {
  it('is read every time where 15 % of the data area is gone, by the large ones alone', async () => {
    expect((await readDamaged(codes.slice(0, 2), 0.15, 'data area', { ...wish, labels: 20 })).label).toBe(20)
  }, 300_000)

  it('is read 99 times of 100 and more where 5 % of every code is gone anywhere, finder marks included', async () => {
    expect((await readDamaged(codes, 0.05, 'anywhere', { ...wish, labels: 100 })).label).toBeGreaterThanOrEqual(99)
  }, 600_000)
})
