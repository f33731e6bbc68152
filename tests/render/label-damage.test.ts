import { describe, expect, it } from 'vitest'
import { spareQr, tagQr } from '../../src/binder/tag-url.ts'
import { readDamaged } from '../support/label-reading.ts'
import { printedCode } from '../support/printed-code.ts'

/*
 * A technician's phone looks some tens of times a second while the hand moves; here it looks six times. The damage stays as it is from look to
 * look, and every code of the label has the whole of it. Rates over more labels: tests/bench/label-damage.bench.ts.
 */

const TEXT = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const codes = [tagQr(TEXT), tagQr(TEXT), spareQr(TEXT)].map(printedCode)
const wish = { seed: 20260501, thorough: false, looks: 6 }

describe('a lid label with its codes, damaged', () => {
  it('is read every time where 15 % of the data area is gone', async () => {
    expect((await readDamaged(codes.slice(0, 2), 0.15, 'data area', { ...wish, labels: 20 })).label).toBe(20)
  }, 300_000)

  // Of 400 labels with seeds 9001, 9002 and this one 396 are read, 99.0 %; by one of the two large codes alone, 96 %.
  it('is read nearly always where 5 % is gone anywhere, finder marks included', async () => {
    expect((await readDamaged(codes, 0.05, 'anywhere', { ...wish, labels: 40 })).label).toBeGreaterThanOrEqual(38)
  }, 600_000)
})
