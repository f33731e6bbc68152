import { describe, expect, it } from 'vitest'
import type { Label } from '../../src/binder/pages.ts'
import { labelView } from '../../src/render/label-view.ts'
import { EN_US } from '../../src/words/words.ts'
import { spareQr, tagQr } from '../../src/binder/tag-url.ts'
import { LABELS_METRIC } from '../look/sheets.ts'

const LABEL_WORDS = { ...EN_US.label, ...EN_US.pages.label }

describe('a label', () => {
  const [fixture] = LABELS_METRIC.labels as [Label]
  const label: Label = { ...fixture, qr: tagQr(fixture.url), spare: spareQr(fixture.url) }
  const sized = (sideMm: number): Label => ({ ...label, qr: { ...label.qr, sideMm } })

  it('sets its tag as large as the room between the codes allows', () => {
    const room = (sideMm: number) => 180 - 2 * (0.9 + 2.4 + sideMm)
    for (const sideMm of [36, 40.7, 45.1, 53.9]) {
      const { tagMm, fits } = labelView(sized(sideMm), LABEL_WORDS)
      expect(fits).toBe(true)
      expect(tagMm * 0.632 * 7).toBeLessThanOrEqual(room(sideMm))
      expect(tagMm).toBeGreaterThan(13)
    }
  })

  it('sets the stations smaller or in columns where there are many, and leaves the last ones to the page where not even that does', () => {
    const view = (count: number) =>
      labelView(
        {
          ...label,
          stations: Array.from({ length: count }, (_, at) => ({ station: `K1/${at + 1}`, waters: 'planter, drip' }))
        },
        LABEL_WORDS
      )
    const [few, some, many, crowd] = [view(2), view(6), view(14), view(80)]
    expect(few.columns).toBe(1)
    expect(some.stations).toHaveLength(6)
    expect(many.stations).toHaveLength(14)
    expect(many.type).toBeLessThan(few.type)
    expect(crowd.fits).toBe(true)
    expect(crowd.stations.length).toBeGreaterThanOrEqual(12)
    expect(crowd.more).toBe(`${80 - crowd.stations.length} more stations: on the page`)
  })

  it('never prints type finer than 6.5 points, and does not fit where not even that leaves room for how to stop the water', () => {
    const long = { ...label, shutOff: 'behind the third gate, down the steps and to the left, '.repeat(18) }
    expect(labelView(long, LABEL_WORDS).fits).toBe(false)
    const wordy = labelView({ ...label, shutOff: long.shutOff.slice(0, 220) }, LABEL_WORDS)
    expect(wordy.fits).toBe(true)
    expect(wordy.type * 10 * wordy.zoom).toBeGreaterThanOrEqual(6.5 - 1e-9)
    const named = labelView({ ...label, site: 'Station Road '.repeat(40) }, LABEL_WORDS)
    expect([named.fits, named.text.site]).toEqual([true, 'Station Road Station Road Station Road Station…'])
    expect(labelView({ ...label, hazardLine: 'Close the lane first. '.repeat(30) }, LABEL_WORDS).fits).toBe(false)
  })
})
