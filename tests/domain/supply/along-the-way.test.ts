import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { alongTheWay, leftAtEndPa } from '../../../src/domain/supply/along-the-way.ts'
import type { WayPart, WayPipe } from '../../../src/domain/supply/along-the-way.ts'
import { startPressure } from '../../../src/domain/supply/start-pressure.ts'
import { whatPasses } from '../../../src/domain/supply/what-passes.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const pipe = (facts: Partial<WayPipe> = {}): WayPipe => ({
  kind: 'pipe',
  name: 'pipe',
  flowM3s: 0.0005,
  insideM: 0.026,
  lengthM: 40,
  riseM: 0,
  roughness: 150,
  ...facts
})

const anyPipe = fc
  .record({
    flowM3s: fc.double({ min: 1e-5, max: 0.003, noNaN: true }),
    insideM: fc.double({ min: 0.012, max: 0.1, noNaN: true }),
    lengthM: fc.double({ min: 0.1, max: 200, noNaN: true }),
    riseM: fc.double({ min: -10, max: 10, noNaN: true })
  })
  .map(facts => pipe(facts))
const anyPart: fc.Arbitrary<WayPart> = fc.oneof(
  anyPipe,
  fc.double({ min: 0, max: 2e5, noNaN: true }).map<WayPart>(lossPa => ({ kind: 'loss', name: 'meter', lossPa })),
  fc
    .double({ min: 5e4, max: 4e5, noNaN: true })
    .map<WayPart>(mostPa => ({ kind: 'regulator', name: 'regulator', mostPa }))
)
const anyWay = fc.array(anyPart, { minLength: 1, maxLength: 8 })

describe('the pressure along the way', () => {
  it('what the parts take and what is left make the start, whatever the parts', () => {
    fc.assert(
      fc.property(anyWay, fc.double({ min: 1e5, max: 1e6, noNaN: true }), (way, startPa) => {
        const passed = alongTheWay(startPa, way)
        const taken = passed.reduce((sum, { lossPa, liftPa }) => sum + lossPa + liftPa, 0)
        expect(taken + (passed.at(-1)?.leftPa ?? 0)).toBeCloseTo(startPa, 3)
      })
    )
  })

  it('more flow never leaves more, a wider pipe never leaves less', () => {
    const more = fc.double({ min: 1, max: 3, noNaN: true })
    fc.assert(
      fc.property(fc.array(anyPipe, { minLength: 1, maxLength: 5 }), more, (way, times) => {
        const left = leftAtEndPa(5e5, way)
        const faster = way.map(one => ({ ...one, flowM3s: one.flowM3s * times }))
        const wider = way.map(one => ({ ...one, insideM: one.insideM * times }))
        expect(leftAtEndPa(5e5, faster)).toBeLessThanOrEqual(left + 1e-6)
        expect(leftAtEndPa(5e5, wider)).toBeGreaterThanOrEqual(left - 1e-6)
      })
    )
  })

  it('a regulator lets through what is below its setting, and no more than its setting', () => {
    const regulator: WayPart = { kind: 'regulator', name: 'regulator', mostPa: 2e5 }
    expect(leftAtEndPa(1.5e5, [regulator])).toBe(1.5e5)
    expect(leftAtEndPa(2e5, [regulator])).toBe(2e5)
    expect(leftAtEndPa(4e5, [regulator])).toBe(2e5)
  })

  it('no parts leave what was there', () => {
    expect(leftAtEndPa(3e5, [])).toBe(3e5)
  })
})

describe('what would pass', () => {
  it('is met by the pressure and by the wider pipe that it names, to the last digits', () => {
    fc.assert(
      fc.property(anyWay, fc.double({ min: 1e4, max: 3e5, noNaN: true }), (way, shortPa) => {
        const neededPa = leftAtEndPa(4e5, way) + shortPa
        const { startPa, wider } = whatPasses(4e5, way, neededPa)
        if (startPa !== undefined) expect(leftAtEndPa(startPa, way)).toBeGreaterThan(neededPa - 1)
        const part = wider && way[wider.index]
        if (wider && part?.kind === 'pipe')
          expect(leftAtEndPa(4e5, way.with(wider.index, { ...part, insideM: wider.insideM }))).toBeGreaterThan(
            neededPa - 1
          )
      })
    )
  })

  it('names the pipe with most friction, and none where friction is less than what is short', () => {
    const way = [pipe({ lengthM: 100 }), pipe({ lengthM: 20 })]
    expect(whatPasses(2e5, way, leftAtEndPa(2e5, way) + 1000).wider?.index).toBe(0)
    expect(whatPasses(2e5, way, 5e5).wider).toBeUndefined()
  })

  it('names no pressure that a regulator would hold back', () => {
    const way: WayPart[] = [{ kind: 'regulator', name: 'regulator', mostPa: 1e5 }, pipe()]
    expect(whatPasses(4e5, way, 1.5e5).startPa).toBeUndefined()
  })
})

describe('the pressure at the start', () => {
  it('is the static one where nothing was measured with water running', () => {
    expect(startPressure({ flowM3s: 0.001, staticPa: 4e5 })).toEqual({ pressurePa: 4e5, by: 'static' })
  })

  it('is the measured one up to the flow at which it was measured', () => {
    const measured = { pressurePa: 3e5, flowM3s: 0.001 }
    expect(startPressure({ flowM3s: 0.001, staticPa: 4e5, measured })).toEqual({ pressurePa: 3e5, by: 'measured' })
    expect(startPressure({ flowM3s: 0.0001, measured })).toEqual({ pressurePa: 3e5, by: 'measured' })
  })

  it('falls beyond it by flow to the power of 1.852: twice the flow, 3.61 times the fall', () => {
    const measured = { pressurePa: 3.8e5, flowM3s: 0.001 }
    const start = startPressure({ flowM3s: 0.002, staticPa: 4e5, measured })
    expect(start).toMatchObject({ by: 'both' })
    expect((start as { pressurePa: number }).pressurePa).toBeCloseTo(4e5 - 0.2e5 * 3.61, -1)
  })

  it('is not guessed beyond it without a static pressure above it', () => {
    const measured = { pressurePa: 3e5, flowM3s: 0.001 }
    expect(startPressure({ flowM3s: 0.002, measured })).toMatchObject({ absent: true })
    expect(startPressure({ flowM3s: 0.002, staticPa: 3e5, measured })).toMatchObject({ absent: true })
    expect(startPressure({ flowM3s: 0.002 })).toMatchObject({ reason: 'no pressure of the supply is stated' })
  })
})

describe('the cards of the supply', () => {
  it('pressure-left reads a way and refuses what it cannot read', () => {
    const left = (way: string) => calcOrAbsent('pressure-left', { start: '60 psi', way })
    expect(calc('pressure-left', { start: '60 psi', way: 'meter 2 psi; regulator 30 psi' })['left-us']).toBeCloseTo(
      30,
      9
    )
    expect(left('meter')).toContain('is no part of the way')
    expect(left('pipe 12 gpm, 1 in, 100 ft, wood')).toContain('is no material of a pipe')
    expect(left('pipe 12 gpm, 0 in, 100 ft, plastic')).toBe('the inside diameter must be more than zero')
    expect(left('pipe 12 gpm, 1 in, 100 ft')).toContain('is no material of a pipe')
    expect(left('pipe 12, 1 in, 100 ft, plastic')).toContain('cannot be read')
  })

  it('pressure-left is enough at exactly what is needed', () => {
    const run = (needed: string) => calc('pressure-left', { start: '60 psi', way: 'meter 20 psi', needed })['enough']
    expect(run('40 psi')).toBe(true)
    expect(run('40.01 psi')).toBe(false)
  })

  it('meter-limit: the line governs where it carries less, and takes size or a stated figure, one of them', () => {
    expect(calc('meter-limit', { safe: '50 gpm' })).toMatchObject({ governs: 'meter' })
    expect(calc('meter-limit', { safe: '50 gpm' })['most-us']).toBeCloseTo(37.5, 9)
    expect(calcOrAbsent('meter-limit', {})).toBe('give safe or size, one of them')
    expect(calcOrAbsent('meter-limit', { safe: '50 gpm', size: '1 in' })).toBe('give safe or size, one of them')
  })

  it('low-head-volume: a 1 in pipe of 100 ft holds 4.49 gal', () => {
    expect(calc('low-head-volume', { inside: '1.049 in', length: '100 ft' })['volume-us']).toBeCloseTo(4.49, 2)
    expect(calcOrAbsent('low-head-volume', { inside: '0 in', length: '100 ft' })).toBe('inside must be more than zero')
  })
})
