import { describe, expect, it } from 'vitest'
import { DIMENSIONS } from '../../src/units/dimension.ts'
import { quantity } from '../../src/units/quantity.ts'
import { STYLES, roundedText, show, showNumber, showStated, unitFor } from '../../src/units/show.ts'
import type { ShowAs } from '../../src/units/show.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ')

describe('showing a figure in the units of the site', () => {
  it.each([
    ['run', 128, '128 m', '420 ft'],
    ['depth', 0.0254, '25.4 mm', '1 in'],
    ['cover', 0.1524, '152 mm', '6 in'],
    ['area', 210, '210 m²', '2260 ft²'],
    ['flow', 38 / 60_000, '38 L/min', '10.04 gpm'],
    ['pressure', 410_000, '4.1 bar', '59 psi'],
    ['resistance', 6.272, '6.27 Ω', '6.27 Ω'],
    ['resistance-per-length', 0.0245, '24.5 Ω/km', '7.468 Ω/kft'],
    ['voltage', 3.409, '3.41 V', '3.41 V'],
    ['current', 0.00002, '0.02 mA', '0.02 mA'],
    ['charge', 2034, '565 mAh', '565 mAh'],
    ['minutes', 1500, '25 min', '25 min'],
    ['temperature', 20, '20 °C', '68 °F'],
    ['temperature', -40, '\u221240 °C', '\u221240 °F'],
    ['percent', 0.7, '70 %', '70 %'],
    ['rate', 0.0127 / 3600, '12.7 mm/h', '0.5 in/h'],
    ['volume', 1284, '1284 m³', '339197 gal']
  ] as const)('%s', (as, si, metric, us) => {
    expect([plain(show(si, as, 'metric')), plain(show(si, as, 'us'))]).toEqual([metric, us])
  })

  it('keeps number and unit together with a space that does not break', () => {
    expect(show(36, 'run', 'metric')).toBe('36\u00a0m')
    expect(showNumber(36, 'run', 'metric')).toBe('36')
    expect(unitFor('run', 'us')).toBe('ft')
  })

  it('knows every unit that its styles name', () => {
    for (const style of Object.keys(STYLES) as ShowAs[]) {
      const { dimension, us, metric } = STYLES[style]
      expect([us, metric].filter(unit => !Object.hasOwn(DIMENSIONS[dimension].units, unit))).toEqual([])
    }
  })
})

describe('rounding', () => {
  it.each([
    [2, 1, '2'],
    [2.04, 1, '2'],
    [2.05, 2, '2.05'],
    [100, 0, '100'],
    [1000, 2, '1000'],
    [0.004, 2, '0'],
    [-0.004, 2, '0'],
    [-2.5, 1, '\u22122.5']
  ])('%d to %d places is “%s”', (value, places, text) => {
    expect(roundedText(value, places)).toBe(text)
  })
})

describe('showing what was stated', () => {
  it('keeps the unit it was stated in, whatever the site uses, in the trade’s signs', () => {
    const stated = [
      quantity(2200, 'ft', 'length'),
      quantity(4.2, 'ohm', 'resistance'),
      quantity(20, 'uA', 'current'),
      quantity(24.5, 'ohm/km', 'resistance-per-length'),
      quantity(38, 'l/min', 'flow'),
      quantity(6, "'", 'length')
    ]
    expect(stated.map(amount => plain(showStated(amount)))).toEqual([
      '2200 ft',
      '4.2 Ω',
      '20 µA',
      '24.5 Ω/km',
      '38 L/min',
      '6 ft'
    ])
  })
})
