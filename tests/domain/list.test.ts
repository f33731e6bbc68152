import { describe, expect, it } from 'vitest'
import { isPresent } from '../../src/base/absent.ts'
import { SOURCES } from '../../src/reference/sources.ts'
import { CALCULATIONS } from '../../src/domain/list.ts'
import { parseInputs } from '../../src/domain/parse-inputs.ts'

const names = CALCULATIONS.map(card => card.name)

describe('the list of calculations', () => {
  it('holds each name once, in order, so that calc and the appendix list them alike', () => {
    expect(names).toEqual([...new Set(names)].sort())
    expect(names.length).toBeGreaterThan(0)
  })

  describe.each(CALCULATIONS)('$name', card => {
    it('is worded whole: title, purpose, a word for every input and output', () => {
      const words = [
        card.title,
        card.does,
        ...[...Object.values(card.inputs), ...Object.values(card.outputs)].map(o => o.does)
      ]
      expect(words.filter(word => word.trim() === '')).toEqual([])
      expect(card.name).toMatch(/^[a-z]+(-[a-z]+)*$/u)
    })

    it('names sources that the register holds, and at least one', () => {
      expect(card.sources.length).toBeGreaterThan(0)
      expect(card.sources.filter(id => !Object.hasOwn(SOURCES, id))).toEqual([])
    })

    it('has a worked case that uses only inputs and outputs it declares, and gives every input that must be given', () => {
      const { inputs, outputs } = card.example
      expect(Object.keys(inputs).filter(name => !Object.hasOwn(card.inputs, name))).toEqual([])
      expect(Object.keys(outputs).filter(name => !Object.hasOwn(card.outputs, name))).toEqual([])
      const due = Object.entries(card.inputs).filter(([, spec]) => spec.optional === undefined)
      expect(due.map(([name]) => name).filter(name => !Object.hasOwn(inputs, name))).toEqual([])
      expect(Object.keys(outputs).length).toBeGreaterThan(0)
    })

    it('gives the worked case within 0.5 %, with steps that show how, when its inputs are typed as printed', () => {
      const parsed = parseInputs(card, card.example.inputs)
      if (!parsed.ok) throw new Error(parsed.problems.map(problem => problem.message).join(' '))
      const result = card.run(parsed.inputs)
      if (!isPresent(result)) throw new Error(result.reason)
      expect(result.steps.length).toBeGreaterThan(0)
      expect(Object.keys(result.value).filter(name => !Object.hasOwn(card.outputs, name))).toEqual([])
      for (const [name, expected] of Object.entries(card.example.outputs)) {
        const actual = result.value[name]
        if (typeof expected !== 'number') expect(actual, name).toBe(expected)
        else
          expect(Math.abs((actual as number) - expected), `${name} is ${actual}`).toBeLessThanOrEqual(
            Math.abs(expected) * 0.005
          )
      }
    })

    it('never hands back a number that is not one, nor prints one in a step', () => {
      const parsed = parseInputs(card, card.example.inputs)
      if (!parsed.ok) throw new Error('the worked case does not parse')
      const result = card.run(parsed.inputs)
      if (!isPresent(result)) throw new Error(result.reason)
      const numbers = Object.values(result.value).filter(value => typeof value === 'number')
      expect(numbers.every(Number.isFinite)).toBe(true)
      expect(result.steps.join(' ')).not.toMatch(/NaN|Infinity|undefined/u)
    })
  })
})
