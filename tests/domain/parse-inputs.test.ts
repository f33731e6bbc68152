import { describe, expect, it } from 'vitest'
import type { Calculation } from '../../src/domain/calculation.ts'
import { CALCULATIONS } from '../../src/domain/list.ts'
import { parseInputs } from '../../src/domain/parse-inputs.ts'

const card = (name: string): Calculation => CALCULATIONS.find(one => one.name === name)!

function problems(name: string, texts: Record<string, string>) {
  const parsed = parseInputs(card(name), texts)
  return parsed.ok ? [] : parsed.problems
}

const only = (name: string, texts: Record<string, string>) => {
  const found = problems(name, texts)
  expect(found).toHaveLength(1)
  return found[0]
}

describe('reading the inputs of a calculation', () => {
  it('hands quantities over in coherent units and passes over what may be left out', () => {
    expect(parseInputs(card('wire-loop'), { size: '0.75 mm²', length: '100 ft' })).toEqual({
      ok: true,
      inputs: { size: { kind: 'area', mm2: 0.75 }, length: expect.closeTo(30.48, 9) }
    })
  })

  it('tells everything that is wrong at once, in the order of the card, unknown names first', () => {
    const found = problems('wire-loop', { lenght: '100 ft', size: 'thick', temperature: '20' })
    expect(found.map(problem => problem.input)).toEqual(['lenght', 'size', 'length', 'temperature'])
  })

  it('names the nearest input for a misspelt one', () => {
    expect(only('wire-loop', { lenght: '1 ft', size: '1 mm²', length: '1 m' })).toEqual({
      input: 'lenght',
      message:
        'wire-loop has no input “lenght”; it has size, length, common, conductor, coating, temperature, splices.',
      fix: '--length'
    })
  })

  it('asks for what must be given with the words of the card and an example', () => {
    expect(only('wire-loop', { size: '1 mm²' })).toEqual({
      input: 'length',
      message: 'length is not given: length of the run, one way.',
      fix: '--length "128 m"'
    })
  })

  it.each([
    ['128', '“128” has no unit; a length is written like “36 m”.', '--length "128 m"'],
    ['1,5 m', '“1,5 m” has a comma; write a point.', '--length "1.5 m"'],
    ['2,050 ft', '“2,050 ft” has a comma; write “2050 ft” or “2.050 ft”, whichever is meant.', '--length "2050 ft"'],
    ['4 ohm', '“ohm” measures a resistance; a length is due, in m, mm, cm, km.', '--length "128 m"'],
    ['4 cubits', '“cubits” is not a unit of a length; use m, mm, cm, km.', '--length "128 m"'],
    ['far', '“far” is not a length; write it like “36 m”.', '--length "128 m"']
  ])('says of a length “%s” what is wrong and how to write it', (length, message, fix) => {
    expect(only('wire-loop', { size: '1 mm²', length })).toEqual({
      input: 'length',
      message: `length: ${message}`,
      fix
    })
  })

  it('takes a choice whatever its case, and offers the nearest', () => {
    const given = { size: '1 mm²', length: '1 m' }
    expect(parseInputs(card('wire-loop'), { ...given, conductor: 'Stranded' })).toMatchObject({
      inputs: { conductor: 'stranded' }
    })
    expect(only('wire-loop', { ...given, conductor: 'strand' })).toEqual({
      input: 'conductor',
      message: 'conductor: “strand” is not one of: solid; stranded; flexible.',
      fix: '--conductor "stranded"'
    })
  })

  it('knows days that do not exist, intervals, counts and numbers', () => {
    expect(only('due-date', { fitted: '2025-02-30' })?.message).toBe(
      'fitted: “2025-02-30” is not a day of the calendar, written year-month-day.'
    )
    expect(only('due-date', { fitted: '2025-02-28', interval: '12' })?.fix).toBe('--interval "12 months"')
    expect(only('due-date', { fitted: '2025-02-28', 'life-days': '1,5' })?.fix).toBe('--life-days "1.5"')
    expect(only('battery-life', { 'rated-pulses': '8,000', 'pulses-per-day': '48' })?.fix).toBe('--rated-pulses "8000"')
    expect(only('battery-life', { 'rated-pulses': '8000', 'pulses-per-day': '1,048' })?.message).toBe(
      'pulses-per-day: “1,048” has a comma; write “1048” or “1.048”, whichever is meant.'
    )
    expect(only('coil-voltage', { 'pulse-volts': '9 V', coil: '6 ohm', loop: '1 ohm', coils: '1.5' })?.message).toBe(
      'coils: “1.5” is not a whole number.'
    )
  })

  it('never says that something is invalid or an error', () => {
    const texts = { size: '', length: '', conductor: '', coating: '', temperature: '', common: '', nonsense: '' }
    const words = problems('wire-loop', texts).flatMap(problem => [problem.message, problem.fix])
    expect(words.length).toBeGreaterThan(10)
    expect(words.join(' ')).not.toMatch(/invalid|error|undefined|NaN/iu)
  })
})
