import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DIMENSIONS } from '../../src/units/dimension.ts'
import type { Dimension } from '../../src/units/dimension.ts'
import { fromSi, inUnit, parseQuantity, quantity, unitsOf, writeQuantity } from '../../src/units/quantity.ts'
import type { Quantity } from '../../src/units/quantity.ts'

const NAMES = Object.keys(DIMENSIONS) as Dimension[]

function parsed<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  const found = parseQuantity(text, dimension)
  if (!found.ok) throw new Error(`${text}: ${found.problem.kind}`)
  return found.value
}

function problem(text: string, dimension: Dimension) {
  const found = parseQuantity(text, dimension)
  return found.ok ? 'no problem' : found.problem
}

const anyQuantity = fc
  .constantFrom(...NAMES)
  .chain(dimension => fc.tuple(fc.constant(dimension), fc.constantFrom(...unitsOf(dimension)), anyNumber()))
  .map(([dimension, unit, value]) => quantity(value, unit, dimension))

function anyNumber() {
  return fc.double({ min: -1e6, max: 1e6, noNaN: true }).map(value => (Object.is(value, -0) ? 0 : value))
}

describe('reading a quantity', () => {
  it.each([
    ['38 L/min', 'flow', 38 / 60_000],
    ['10 gpm', 'flow', 6.30901964e-4],
    ['960 ft²', 'area', 89.1869184],
    ['2.5 mm²', 'area', 2.5e-6],
    ['4.1 bar', 'pressure', 410_000],
    ['62 psi', 'pressure', 427_474.952],
    ['45 min', 'duration', 2700],
    ['60 ms', 'duration', 0.06],
    ['565 mAh', 'charge', 2034],
    ['4700 µF', 'capacitance', 0.0047],
    ['70 %', 'ratio', 0.7],
    ['24.5 ohm/km', 'resistance-per-length', 0.0245],
    ['4.99 ohm/kft', 'resistance-per-length', 0.016371391],
    ['12 mm/h', 'rate', 0.012 / 3600],
    ['1284 m³', 'volume', 1284],
    ['1 HCF', 'volume', 2.8316847],
    ['125 kN', 'force', 125_000]
  ] as const)('“%s” is %s in its coherent unit', (text, dimension, si) => {
    // The units library carries the pound-force to seven digits.
    expect(parsed(text, dimension).si / si).toBeCloseTo(1, 6)
  })

  it('keeps the number and the unit as written', () => {
    expect(parsed('2200 ft', 'length')).toMatchObject({ value: 2200, unit: 'ft', dimension: 'length' })
  })

  it('takes any width of space between number and unit, and none', () => {
    const spaces = ['36 m', '36m', '36\u00a0m', '36\u202fm', '36 \u2009 m', '  36   m  ', '36\tm']
    expect(spaces.map(text => parsed(text, 'length').si)).toEqual(spaces.map(() => 36))
  })

  it('takes both spellings of ohm, micro and the superscript', () => {
    expect(['4.2 ohm', '4.2 Ω', '4.2 \u2126', '4.2 ohms'].map(text => parsed(text, 'resistance').si)).toEqual([
      4.2, 4.2, 4.2, 4.2
    ])
    for (const text of ['20 µA', '20 μA', '20 uA']) expect(parsed(text, 'current').si).toBeCloseTo(2e-5, 15)
    expect(parsed('210 m2', 'area').si).toBe(parsed('210 m²', 'area').si)
    expect(parsed("6'", 'length').si).toBe(parsed('6 ft', 'length').si)
    expect(parsed('1" ', 'length').si).toBeCloseTo(0.0254, 12)
  })

  it('takes a true minus sign and exponents', () => {
    expect(parsed('\u22125 °C', 'temperature').si).toBe(-5)
    expect(parsed('1e3 m', 'length').si).toBe(1000)
    expect(parsed('.5 m', 'length').si).toBe(0.5)
  })

  it('takes temperatures as points on the scale: 32 °F is 0 °C, −40 is −40 in both', () => {
    expect(['32 °F', '-40 °F', '212 F', '20 °C', '0 C'].map(text => parsed(text, 'temperature').si)).toEqual([
      0, -40, 100, 20, 0
    ])
  })

  it('refuses a number without a unit, zero too', () => {
    expect(problem('30', 'length')).toEqual({ kind: 'unit-missing', number: '30' })
    expect(problem('0', 'length')).toEqual({ kind: 'unit-missing', number: '0' })
    expect(problem('-3', 'temperature')).toEqual({ kind: 'unit-missing', number: '-3' })
  })

  it('refuses a decimal comma and prints it with a point', () => {
    expect(problem('2,5 mm²', 'area')).toEqual({ kind: 'decimal-comma', corrected: '2.5 mm²' })
    expect(problem('4,2', 'resistance')).toEqual({ kind: 'decimal-comma', corrected: '4.2' })
  })

  it('tells both readings of a comma that may mean thousands, and takes neither', () => {
    expect(problem('2,050 ft²', 'area')).toEqual({
      kind: 'decimal-comma',
      corrected: '2.050 ft²',
      thousands: '2050 ft²'
    })
    expect(problem('0,125 m', 'length')).toEqual({ kind: 'decimal-comma', corrected: '0.125 m' })
    expect(problem('1,2345 m', 'length')).toEqual({ kind: 'decimal-comma', corrected: '1.2345 m' })
    expect(parseQuantity('1,284,000 ft²', 'area').ok).toBe(false)
  })

  it('tells a unit of another kind from one it does not know', () => {
    expect(problem('38 L/min', 'length')).toEqual({ kind: 'unit-of-another-kind', unit: 'L/min', dimension: 'flow' })
    expect(problem('3 furlongs', 'length')).toEqual({ kind: 'unit-unknown', unit: 'furlongs' })
    expect(problem('3 constructor', 'length')).toEqual({ kind: 'unit-unknown', unit: 'constructor' })
    expect(problem('3 M', 'length')).toEqual({ kind: 'unit-unknown', unit: 'M' })
  })

  it.each(['', '   ', 'm', 'ten m', '1.2.3 m', '--5 m', '½ in'])('“%s” is no quantity', text => {
    expect(parseQuantity(text, 'length').ok).toBe(false)
  })
})

describe('writing a quantity', () => {
  it('gives back what was read, for every unit of every kind', () => {
    fc.assert(
      fc.property(anyQuantity, amount => {
        expect(parseQuantity(writeQuantity(amount), amount.dimension)).toEqual({ ok: true, value: amount })
      }),
      { numRuns: 500 }
    )
  })

  it('turns into the coherent unit and back within the last bits', () => {
    fc.assert(
      fc.property(anyQuantity, amount => {
        const back = fromSi(amount.si, amount.unit, amount.dimension)
        expect(Math.abs(back - amount.value)).toBeLessThanOrEqual(Math.abs(amount.value) * 1e-12 + 1e-9)
      })
    )
  })

  it('hands a value back untouched in the unit it was stated in', () => {
    expect(inUnit(quantity(0.1, 'ft', 'length'), 'ft')).toBe(0.1)
    expect(inUnit(quantity(100, 'ft', 'length'), 'm')).toBeCloseTo(30.48, 10)
  })

  it('throws on a unit that the program itself misspells', () => {
    expect(() => quantity(1, 'furlong', 'length')).toThrow('furlong is not a unit of length')
    expect(() => fromSi(1, 'furlong', 'length')).toThrow('furlong is not a unit of length')
  })
})

describe('the table of units', () => {
  it('has for every kind an example that reads as that kind, and a noun', () => {
    for (const name of NAMES) {
      expect(parseQuantity(DIMENSIONS[name].example, name).ok, DIMENSIONS[name].example).toBe(true)
      expect(DIMENSIONS[name].noun).toMatch(/^an? /u)
    }
  })

  it('gives no spelling to two kinds, so that a slip is always seen, but F: farad and Fahrenheit', () => {
    const owners = NAMES.flatMap(name => unitsOf(name).map(unit => `${unit}`))
    expect(owners.filter((unit, index) => owners.indexOf(unit) !== index)).toEqual(['F'])
  })
})
