import { describe, expect, it } from 'vitest'
import { visitOfFlags } from '../../src/load/visit-flags.ts'
import type { VisitFlags } from '../../src/load/visit-flags.ts'

const none: VisitFlags = {
  on: '2026-05-04',
  box: [],
  battery: [],
  volts: [],
  reading: [],
  program: [],
  test: [],
  task: [],
  found: [],
  done: [],
  open: [],
  repaired: [],
  part: [],
  photo: []
}
const ground = {
  setOf: (id: string) => (id === 'K1' ? { kind: 'AA alkaline', count: 4 } : undefined),
  supplies: ['S1']
}

function data(flags: Partial<VisitFlags>): unknown {
  const read = visitOfFlags({ ...none, ...flags }, ground)
  return read.ok ? read.data : read.troubles
}

describe('a visit from flags', () => {
  it('holds what was said and nothing else', () => {
    expect(data({ by: 'M. Example', found: ['Z3 opens slowly'] })).toEqual({
      on: '2026-05-04',
      by: 'M. Example',
      found: ['Z3 opens slowly']
    })
  })

  it.each([
    ['K1=9 V alkaline', { controller: 'K1', fitted: '2026-05-04', kind: '9 V alkaline', count: 4 }],
    ['K1=1 x 9 V alkaline', { controller: 'K1', fitted: '2026-05-04', kind: '9 V alkaline', count: 1 }],
    ['K1=2 × 9 V lithium', { controller: 'K1', fitted: '2026-05-04', kind: '9 V lithium', count: 2 }],
    ['K1', { controller: 'K1', fitted: '2026-05-04', kind: 'AA alkaline', count: 4 }],
    ['K7=9 V alkaline', { controller: 'K7', fitted: '2026-05-04', kind: '9 V alkaline', count: 1 }],
    [
      'K1=4 x AA alkaline, rest 6.4 V, under load 6.2 V',
      { controller: 'K1', fitted: '2026-05-04', kind: 'AA alkaline', count: 4, rest: '6.4 V', 'under-load': '6.2 V' }
    ]
  ])('reads cells that were changed: %s', (battery, expected) => {
    expect(data({ battery: [battery] })).toMatchObject({ batteries: [expected] })
  })

  it('does not say that measured cells were fitted', () => {
    expect(data({ volts: ['K1=rest 9.4 V'] })).toMatchObject({ batteries: [{ controller: 'K1', rest: '9.4 V' }] })
  })

  it.each([
    ['K1/1=4.4ohm', { station: 'K1/1', loop: '4.4ohm' }],
    ['K1/01=4.4 Ω', { station: 'K1/1', loop: '4.4 Ω' }],
    ['K1/1=coil 4.2 ohm, flow 38 L/min', { station: 'K1/1', coil: '4.2 ohm', flow: '38 L/min' }],
    [
      'K1/1=38 L/min, 52 psi, opened, not closed',
      { station: 'K1/1', flow: '38 L/min', pressure: '52 psi', opened: 'yes', closed: 'no' }
    ],
    ['S1=1284 m³', { supply: 'S1', meter: '1284 m³' }],
    ['S1=2214300 gal', { supply: 'S1', meter: '2214300 gal' }],
    // A slip of the pen stays for the reader of visits, who says what to write.
    ['K1/1=loop 4,4 ohm', { station: 'K1/1', loop: '4,4 ohm' }]
  ])('reads what a meter showed: %s', (reading, expected) => {
    expect(data({ reading: [reading] })).toMatchObject({ readings: [expected] })
  })

  it('reads programs, tests and parts', () => {
    const said = data({
      program: ['K1=clock 4 min fast, found A at 60 %, left A at 100 %'],
      test: ['S1=passed, by J. Sample', 'S1=failed'],
      part: ['gel-filled connector=2', 'diaphragm']
    })
    expect(said).toMatchObject({
      programs: [{ controller: 'K1', clock: '4 min fast', found: 'A at 60 %', left: 'A at 100 %' }],
      tests: [
        { supply: 'S1', passed: 'yes', tester: 'J. Sample' },
        { supply: 'S1', passed: 'no' }
      ],
      parts: [
        { item: 'gel-filled connector', count: 2 },
        { item: 'diaphragm', count: 1 }
      ]
    })
  })

  it('drops no part of a flag that it does not understand: the flag is told of', () => {
    const volts = 'K1=rest 9.4 V, load 8.9 V'
    expect(data({ volts: [volts] })).toMatchObject([{ flag: 'volts', written: volts }])
    expect(data({ battery: ['K1=9 V alkaline, lithium'] })).toMatchObject([{ flag: 'battery' }])
    expect(data({ test: ['S1=passed, by J. Sample, at noon'] })).toMatchObject([{ flag: 'test' }])
  })

  it('tells of every flag that cannot be read, each with a pattern, and gives nothing', () => {
    const troubles = data({ reading: ['K1/1=44', '=4 ohm'], test: ['S1'], program: ['K1=A at 60 %'], volts: ['K1'] })
    expect(troubles).toHaveLength(5)
    expect(troubles).toContainEqual({ flag: 'reading', written: 'K1/1=44', like: 'K1/1=4.4ohm' })
  })
})
