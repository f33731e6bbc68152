import { describe, expect, it } from 'vitest'
import { withoutPrivate } from '../../src/load/without-private.ts'

describe('a text that is handed on', () => {
  it('keeps neither what is private nor a comment nor a phone that is not public', () => {
    const text = [
      '---',
      'company: Fenwick',
      'contacts:',
      '  - { role: owner, name: A. Sample, phone: "0100 1", public: yes }',
      '  - { role: installer, name: B. Sample, phone: "0100 2" }',
      'private: { gate code: "5520" } # 5520',
      '---',
      'Prose.',
      ''
    ].join('\n')
    const told = withoutPrivate(text)
    expect(told).toContain('company: Fenwick')
    expect(told).toContain('0100 1')
    expect(told).toMatch(/Prose\.\n$/u)
    for (const word of ['5520', '0100 2', 'private']) expect(told).not.toContain(word)
  })

  it('loses keys that are nested too deep to be read, and keeps its prose', () => {
    const deep = `---\ncompany: ${'['.repeat(5000)}0100 2${']'.repeat(5000)}\n---\nProse.\n`
    expect(withoutPrivate(deep)).toBe('---\n---\nProse.\n')
  })
})
