import { describe, expect, it } from 'vitest'
import { stated } from '../../src/binder/values.ts'
import { arePaired } from '../../src/render/paired-facts.ts'

const row = (label: number, text: number) => ({ label: 'x'.repeat(label), value: stated('x'.repeat(text)) })

describe('facts two in a row', () => {
  it('are short in name and value, to the letter, and have no note', () => {
    const short = row(30, 26)
    expect(arePaired([short, short, short])).toBe(true)
    expect(arePaired([short, row(31, 1)])).toBe(false)
    expect(arePaired([short, row(1, 27)])).toBe(false)
    expect(arePaired([short, { ...short, value: { ...short.value, note: 'from memory' } }])).toBe(false)
  })

  it('are two at least', () => {
    expect([arePaired([row(1, 1)]), arePaired([])]).toEqual([false, false])
  })
})
