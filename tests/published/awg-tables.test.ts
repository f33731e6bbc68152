import { describe, expect, it } from 'vitest'
import { isPresent } from '../../src/base/absent.ts'
import { awgDiameterM } from '../../src/domain/wire/awg.ts'
import { ohmPerKft } from '../../src/domain/wire/nec.ts'
import { resistancePerM } from '../../src/domain/wire/resistance.ts'
import { circularMils } from '../../src/domain/wire/wire-size.ts'
import { expectClose, expectPrinted } from '../support/close.ts'

const SOLID = { conductor: 'solid', coating: 'plain' } as const

function solidOhmPerKft(gauge: number, temperatureC: number): number {
  const wire = resistancePerM({ kind: 'awg', gauge }, SOLID, temperatureC)
  if (!isPresent(wire)) throw new Error(wire.reason)
  return ohmPerKft(wire.ohmPerM)
}

/**
 * Georgia State University, HyperPhysics, "Common Wire Gauges", from Floyd, Electric Circuit Fundamentals, 2nd edition: circular mils,
 * ohms per 1000 ft at 20 °C, diameter in inches. As printed, 4/0 to 40.
 */
const COLLEGE_TABLE = `
-3 211600 0.049 0.46
-2 167810 0.0618 0.40965
-1 133080 0.078 0.3648
0 105530 0.0983 0.32485
1 83694 0.124 0.2893
2 66373 0.1563 0.25763
3 52634 0.197 0.22942
4 41742 0.2485 0.20431
5 33102 0.3133 0.18194
6 26250 0.3951 0.16202
7 20816 0.4982 0.14428
8 16509 0.6282 0.12849
9 13094 0.7921 0.11443
10 10381 0.9989 0.10189
11 8234 1.26 0.09074
12 6529 1.588 0.0808
13 5178.4 2.003 0.07196
14 4106.8 2.525 0.06408
15 3256.7 3.184 0.05707
16 2582.9 4.016 0.05082
17 2048.2 5.064 0.04526
18 1624.3 6.385 0.0403
19 1288.1 8.051 0.03589
20 1021.5 10.15 0.03196
21 810.1 12.8 0.02846
22 642.4 16.14 0.02535
23 509.45 20.36 0.02257
24 404.01 25.67 0.0201
25 320.4 32.37 0.0179
26 254.1 40.81 0.01594
27 201.5 51.47 0.0142
28 159.79 64.9 0.01264
29 126.72 81.83 0.01126
30 100.5 103.2 0.01002
31 79.7 130.1 0.00893
32 63.21 164.1 0.00795
33 50.13 206.9 0.00708
34 39.75 260.9 0.0063
35 31.52 329 0.00561
36 25 414.8 0.005
37 19.83 523.1 0.00445
38 15.72 659.6 0.00396
39 12.47 831.8 0.00353
40 9.89 1049 0.00314`

/** Kuphaldt, Lessons In Electric Circuits, volume V (Reference), chapter 3, solid copper wire table: diameter in inches, circular mils. */
const TEXTBOOK_TABLE = `
-3 0.4600 211600
-2 0.4096 167800
-1 0.3648 133100
0 0.3249 105500
1 0.2893 83690
2 0.2576 66370
3 0.2294 52630
4 0.2043 41740
5 0.1819 33100
6 0.1620 26250
7 0.1443 20820
8 0.1285 16510
9 0.1144 13090
10 0.1019 10380
11 0.09074 8234
12 0.08081 6530
13 0.07196 5178
14 0.06408 4107
15 0.05707 3257
16 0.05082 2583
17 0.04526 2048
18 0.04030 1624
19 0.03589 1288
20 0.03196 1022
21 0.02846 810.1
22 0.02535 642.5
23 0.02257 509.5
24 0.02010 404.0
25 0.01790 320.4
26 0.01594 254.1
27 0.01420 201.5
28 0.01264 159.8
29 0.01126 126.7
30 0.01003 100.5
31 0.008928 79.70
32 0.007950 63.21
33 0.007080 50.13
34 0.006305 39.75
35 0.005615 31.52
36 0.005000 25.00
37 0.004453 19.83
38 0.003965 15.72
39 0.003531 12.47
40 0.003145 9.888`

const rowsOf = (table: string) =>
  table
    .trim()
    .split('\n')
    .map(line => line.split(' ') as [string, string, string, ...string[]])

describe('AWG, whole table, Georgia State University after Floyd, 20 °C (44 gauges, 132 values)', () => {
  it('covers every gauge from 4/0 to 40', () => {
    expect(rowsOf(COLLEGE_TABLE).map(([gauge]) => Number(gauge))).toEqual(
      Array.from({ length: 44 }, (_, index) => index - 3)
    )
  })

  // Circular mils are printed to five figures and some to four, the large ones rounded to tens: 0.03 % is the widest such rounding.
  // Ohms within the print: one unit of its last digit, because the table's own resistivity is rounded. Diameters: 1.1 units, as 1/0 is
  // printed 0.32485 where the formula gives 0.32486.
  it.each(rowsOf(COLLEGE_TABLE))('gauge %s is %s cmil, %s Ω per 1000 ft, %s in', (gauge, cmil, ohm, inch) => {
    const diameterM = awgDiameterM(Number(gauge))
    expectClose(circularMils(diameterM * 1000), Number(cmil), 0.03)
    expectPrinted(solidOhmPerKft(Number(gauge), 20), ohm, 1)
    expectPrinted(diameterM / 0.0254, inch as string, 1.1)
  })
})

describe('AWG, whole table, Lessons In Electric Circuits, volume V, chapter 3 (44 gauges, 88 values)', () => {
  // Four significant figures; the formula is exact, so half a unit of the last digit is all that rounding may take, and circular mils
  // were squared from the rounded diameters, which adds 0.02 %.
  it.each(rowsOf(TEXTBOOK_TABLE))('gauge %s is %s in and %s cmil', (gauge, inch, cmil) => {
    const diameterM = awgDiameterM(Number(gauge))
    expectPrinted(diameterM / 0.0254, inch, 0.51)
    expectClose(circularMils(diameterM * 1000), Number(cmil), 0.05)
  })
})

describe('AWG at 20 °C, a cable tester’s table of ohms per foot (4 values)', () => {
  // Four printed figures, so 0.1 %; two rows print three.
  it.each([
    [12, 0.001588, 0.1],
    [14, 0.002525, 0.1],
    [18, 0.00639, 0.1],
    [22, 0.01614, 0.1]
  ])('%d AWG is %d Ω a foot', (gauge, published, percent) => {
    expectClose(solidOhmPerKft(gauge, 20) / 1000, published, percent)
  })
})

describe('NEC chapter 9, table 8, solid uncoated at 75 °C, against formula and the 20 °C factor (6 values)', () => {
  // Two bases meet here, 0.00393 from 20 °C and the table’s own rounding to three figures: 0.5 %.
  it.each([
    [18, 7.77],
    [16, 4.89],
    [14, 3.07],
    [12, 1.93],
    [10, 1.21],
    [8, 0.764]
  ])('%d AWG is %d Ω per 1000 ft', (gauge, published) => {
    expectClose(solidOhmPerKft(gauge, 75), published, 0.5)
  })
})

describe('US Navy NEETS module 4, figure 1B, ohms per 1000 ft at 25 and 65 °C (8 values)', () => {
  // The Navy table prints three figures: 0.5 %.
  it.each([
    [6, 0.403, 0.465],
    [8, 0.641, 0.739],
    [10, 1.02, 1.18],
    [12, 1.62, 1.87]
  ])('No. %d is %d and %d Ω', (gauge, at25, at65) => {
    expectClose(solidOhmPerKft(gauge, 25), at25, 0.5)
    expectClose(solidOhmPerKft(gauge, 65), at65, 0.5)
  })
})
