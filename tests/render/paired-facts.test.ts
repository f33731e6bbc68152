import { describe, expect, it } from 'vitest'
import { stated } from '../../src/binder/values.ts'
import { arePaired, isShortFact } from '../../src/render/paired-facts.ts'

const row = (label: string, text: string) => ({ label, value: stated(text) })
const [short, long] = [row('Issued', '2026-01-12'), row('Shut-off', 'lowest box of the steps, beside the gate valve')]

describe('facts two in a row', () => {
  it('are short in name and value, to the letter, and have no note', () => {
    expect(isShortFact(row('x'.repeat(27), 'x'.repeat(26)))).toBe(true)
    expect(isShortFact(row('x'.repeat(28), 'x'))).toBe(false)
    expect(isShortFact(row('x', 'x'.repeat(27)))).toBe(false)
    expect(isShortFact({ ...short, value: { ...short.value, note: 'from memory' } })).toBe(false)
  })

  it('are all of a list, or four and three quarters of it; one alone and none are no pair', () => {
    expect(arePaired([short, short])).toBe(true)
    expect(arePaired([short, short, short, short, long])).toBe(true)
    expect(arePaired([short, short, short, long])).toBe(false)
    expect(arePaired([short, short, short, short, long, long])).toBe(false)
    expect([arePaired([short]), arePaired([])]).toEqual([false, false])
  })
})
