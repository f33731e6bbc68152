import { describe, expect, it } from 'vitest'
import { blotted, harmless } from '../../src/report/harmless.ts'

describe('a text for a terminal', () => {
  it.each([
    ['a color', 'red \u001b[31m', 'red \\u001b[31m'],
    ['a title of the window', '\u001b]0;x\u0007', '\\u001b]0;x\\u0007'],
    ['a return to the start of the line', 'a\rb', 'a\\u000db'],
    ['a zero', 'a\0b', 'a\\u0000b'],
    ['a sign of the second row', '\u009b2J', '\\u009b2J'],
    ['an order of reading turned round', '\u202etxet', '\\u202etxet']
  ])('shows %s as its number', (_, text, shown) => {
    expect(harmless(text)).toBe(shown)
  })

  it('keeps line ends, tabs, letters of every script, and marks that turn nothing round', () => {
    const text = 'a\tb\nΩ 水 🌱 é \u200f שלום'
    expect(harmless(text)).toBe(text)
  })

  it('means the same within JSON', () => {
    const value = { title: '\u009b\u202e\u007f' }
    expect(JSON.parse(harmless(JSON.stringify(value)))).toEqual(value)
  })

  it('blots one sign for one, so that the mark below stays below', () => {
    expect(blotted('a\tb\u001bc\u202ed')).toBe('a b\ufffdc\ufffdd')
  })
})
