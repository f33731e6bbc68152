import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { coilVolt } from '../../../src/domain/wire/coil-voltage.ts'
import { AWG_LADDER, METRIC_LADDER, ladderFrom } from '../../../src/domain/wire/ladder.ts'
import { allowedLoopOhm, judge } from '../../../src/domain/wire/limit.ts'
import type { OutputLimit } from '../../../src/domain/wire/limit.ts'
import { parallelOhm } from '../../../src/domain/wire/parallel.ts'
import { parseStatedLength } from '../../../src/domain/wire/stated-length.ts'
import { climb } from '../../../src/domain/wire/wire-choose.ts'
import { judgeAll } from '../../../src/domain/wire/wire-limit.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'
import { anyLengthM, anyOhm } from './arbitrary.ts'

const SOLID = { conductor: 'solid', coating: 'plain' } as const
const STRANDED = { conductor: 'stranded', coating: 'plain' } as const
const PULSE = { form: 'voltage', pulseVolt: 8.5, lowestVolt: 5.5, coilOhm: 4.2 } as const

function allowed(limit: OutputLimit): number {
  const found = allowedLoopOhm(limit, SOLID)
  if (!isPresent(found)) throw new Error(found.reason)
  return found.value
}

describe('the loop that a limit allows', () => {
  it('by voltage is the coil times what the pulse has to spare: 4.2 Ω × (8.5 / 5.5 − 1) = 2.29 Ω', () => {
    expect(allowed(PULSE)).toBeCloseTo(2.2909, 4)
  })

  it('leaves the coil exactly its lowest volts', () => {
    fc.assert(
      fc.property(anyOhm, fc.double({ min: 3, max: 6, noNaN: true }), (coilOhm, lowestVolt) => {
        const loopOhm = allowed({ form: 'voltage', pulseVolt: 9, lowestVolt, coilOhm })
        expect(coilVolt({ pulseVolt: 9, coilOhm, loopOhm, sourceOhm: 0 })).toBeCloseTo(lowestVolt, 9)
      })
    )
  })

  it('halves exactly with two equal valves on one output, in each of the three forms', () => {
    fc.assert(
      fc.property(anyOhm, anyLengthM, (ohm, lengthM) => {
        const byVolts = (coilOhm: number) => allowed({ ...PULSE, coilOhm })
        expect(byVolts(parallelOhm([ohm, ohm]))).toBeCloseTo(byVolts(ohm) / 2, 9)
        const byLoop = (coils: number) => allowed({ form: 'loop', ohm, coils })
        expect(byLoop(2)).toBeCloseTo(byLoop(1) / 2, 9)
        const size = { kind: 'awg', gauge: 14 } as const
        const byLength = (coils: number) => allowed({ form: 'length', lengthM, unit: 'm', size, coils })
        expect(byLength(2)).toBeCloseTo(byLength(1) / 2, 9)
      })
    )
  })

  it('by a length without a size is any loop: a cap is on length alone, whatever hangs on it', () => {
    const cap: OutputLimit = { form: 'length', lengthM: 30, unit: 'm', coils: 2 }
    expect(allowed(cap)).toBe(Infinity)
    expect(judge(cap, { lengthM: 30, loopOhm: 999 }, SOLID)).toEqual({ passes: true, longestM: 30 })
  })

  it('by a length at a size rests on wire made like the run’s: stranded against stranded', () => {
    const limit: OutputLimit = { form: 'length', lengthM: 100, unit: 'm', size: { kind: 'awg', gauge: 14 }, coils: 1 }
    const loops = [SOLID, STRANDED].map(make => {
      const found = allowedLoopOhm(limit, make)
      return isPresent(found) ? found.value : 0
    })
    expect(loops[1]! / loops[0]!).toBeGreaterThan(1.01)
  })

  it('is absent where the size of the limit is a bare mm', () => {
    const limit: OutputLimit = { form: 'length', lengthM: 100, unit: 'm', size: { kind: 'ambiguous', mm: 1 }, coils: 1 }
    expect(isAbsent(allowedLoopOhm(limit, SOLID))).toBe(true)
    expect(isAbsent(judgeAll([limit], { lengthM: 1, loopOhm: 1 }, SOLID))).toBe(true)
  })
})

describe('judging a run', () => {
  it('passes exactly at the limit and fails a hair over it', () => {
    const limit: OutputLimit = { form: 'loop', ohm: 10, coils: 1 }
    const at = (loopOhm: number) => judge(limit, { lengthM: 100, loopOhm }, SOLID)
    expect(at(10)).toEqual({ passes: true, longestM: 100 })
    expect(at(10.0001)).toMatchObject({ passes: false })
  })

  it('allows no length at all where the pulse is weaker than the coil needs', () => {
    const limit: OutputLimit = { ...PULSE, pulseVolt: 5 }
    expect(judge(limit, { lengthM: 10, loopOhm: 0.1 }, SOLID)).toEqual({ passes: false, longestM: 0 })
  })

  it('names the tightest first, by the run it would allow', () => {
    const limits: OutputLimit[] = [
      PULSE,
      { form: 'loop', ohm: 2, coils: 1 },
      { form: 'length', lengthM: 500, unit: 'm', coils: 1 }
    ]
    const judged = judgeAll(limits, { lengthM: 100, loopOhm: 4.9 }, SOLID)
    expect(isPresent(judged) && judged.map(one => one.limit.form)).toEqual(['loop', 'voltage', 'length'])
  })
})

describe('choosing a size', () => {
  it('never picks a thinner wire for a longer run', () => {
    fc.assert(
      fc.property(anyLengthM, anyLengthM, fc.constantFrom(METRIC_LADDER, AWG_LADDER), (one, other, ladder) => {
        const rung = (lengthM: number) => {
          const rungs = climb(ladder, lengthM, [PULSE], SOLID)
          return isPresent(rungs) ? rungs.length - (rungs.at(-1)?.passes ? 1 : 0) : -1
        }
        expect(rung(Math.max(one, other))).toBeGreaterThanOrEqual(rung(Math.min(one, other)))
      })
    )
  })

  it('stops at the first size that passes, and every size before it fails', () => {
    fc.assert(
      fc.property(anyLengthM, lengthM => {
        const rungs = climb(METRIC_LADDER, lengthM, [PULSE], SOLID)
        if (!isPresent(rungs)) throw new Error(rungs.reason)
        expect(rungs.slice(0, -1).every(rung => !rung.passes && rung.longestM < lengthM)).toBe(true)
        const last = rungs.at(-1)!
        expect(last.passes).toBe(last.longestM >= lengthM * (1 - 1e-9))
      })
    )
  })

  it('is absent without a limit, and says how far the thickest would reach where none passes', () => {
    expect(isAbsent(climb(METRIC_LADDER, 10, [], SOLID))).toBe(true)
    const inputs = { length: '2000 m', ladder: 'metric', 'limit-loop': '7 ohm' }
    expect(calcOrAbsent('wire-choose', inputs)).toMatch(/no size up to 10.mm² passes at this length; 1913.m would/u)
  })

  it('starts from the size there is: the ladder above a diameter or an odd area begins with the next thicker', () => {
    const sizes = (size: Parameters<typeof ladderFrom>[0]) =>
      ladderFrom(size).map(one => ('mm2' in one ? one.mm2 : one))
    expect(sizes({ kind: 'area', mm2: 0.8 })).toEqual([0.8, 1, 1.5, 2.5, 4, 6, 10])
    expect(ladderFrom({ kind: 'diameter', mm: 0.8 })[1]).toEqual({ kind: 'area', mm2: 0.75 })
    expect(ladderFrom({ kind: 'awg', gauge: 13 }).slice(0, 2)).toEqual([
      { kind: 'awg', gauge: 13 },
      { kind: 'awg', gauge: 12 }
    ])
    expect(ladderFrom({ kind: 'ambiguous', mm: 1 })).toEqual([])
  })
})

describe('a length as a sheet prints it', () => {
  it.each([
    ['100 ft (30 m)', 100, 'ft'],
    ['30 m (100 ft)', 30, 'm'],
    ['420 m / 1380 ft', 420, 'm'],
    ['100 ft or 30 m', 100, 'ft'],
    ['  100 ft ', 100, 'ft']
  ])('%s is %d %s', (text, value, unit) => {
    expect(parseStatedLength(text)).toMatchObject({ value, unit })
  })

  it.each(['100', '', 'far', '0 ft', '-3 m', '12 ohm'])('“%s” is no length', text => {
    expect(parseStatedLength(text)).toBeUndefined()
  })

  it('makes wire-limit say so, with the way to write it', () => {
    const said = calcOrAbsent('wire-limit', { size: '18 AWG', length: '90 ft', 'limit-length': 'far' })
    expect(said).toBe('limit-length: “far” is not a length; write it like “100 ft” or “100 ft (30 m)”')
  })
})

describe('what the wire cards say of inputs that do not fit together', () => {
  const run = { size: '18 AWG', length: '90 ft' }

  it.each([
    ['no limit', {}, /give a limit/u],
    ['half a limit by voltage', { 'pulse-volts': '9 V' }, /needs pulse-volts, lowest-volts and coil/u],
    [
      'a coil of nothing',
      { 'pulse-volts': '9 V', 'lowest-volts': '6 V', coil: '0 ohm' },
      /coil must be more than zero/u
    ],
    ['no coils', { 'limit-loop': '7 ohm', coils: '0' }, /coils must be more than zero/u]
  ])('%s', (_, inputs, said) => {
    expect(calcOrAbsent('wire-limit', { ...run, ...inputs })).toMatch(said)
  })

  it('a run of no length is refused, a loop of no ohms is fine', () => {
    expect(calcOrAbsent('wire-loop', { size: '18 AWG', length: '0 ft' })).toMatch(/length must be more than zero/u)
    expect(calc('coil-voltage', { 'pulse-volts': '9 V', coil: '6 ohm', loop: '0 ohm' })['coil-volts']).toBe(9)
  })

  it('two coils side by side halve the resistance, and a source ahead of the terminals lowers the volts', () => {
    const circuit = { 'pulse-volts': '9 V', coil: '6 ohm', loop: '3 ohm' }
    expect(calc('coil-voltage', { ...circuit, coils: '2' })).toMatchObject({ 'coil-volts': 4.5, 'coils-together': 3 })
    expect(calc('coil-voltage', { ...circuit, source: '9 ohm' })['coil-volts']).toBe(3)
  })

  it('a common of another size counts for the way back only', () => {
    const same = calc('wire-loop', { size: '1.5 mm²', length: '100 m' })['loop'] as number
    const mixed = calc('wire-loop', { size: '1.5 mm²', length: '100 m', common: '2.5 mm²' })['loop'] as number
    expect(same).toBeCloseTo(2.42, 9)
    expect(mixed).toBeCloseTo(1.951, 9)
  })
})
