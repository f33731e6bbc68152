import { describe, expect, it } from 'vitest'
import { tagTokens } from '../../src/build/tag-tokens.ts'

describe('what may be a tag in a text', () => {
  it('stands behind the key "tag", in blocks, in braces and in quotes', () => {
    const text = ['- id: VB1', '  tag: 7KQ3F9X', '- { id: VB2, tag: "22222AB", where: north }', "tag: 'X'"].join('\n')
    expect(tagTokens(text)).toEqual({ tokens: ['7KQ3F9X', '22222AB', 'X'], opaque: false })
  })

  it('does not stand behind another key that ends in the word', () => {
    expect(tagTokens("shut-off-tag: 'brass, engraved'\nshut_off_tag: brass").tokens).toEqual([])
  })

  it('may hide where a text is written unusually', () => {
    for (const text of ['tag: >\n  7KQ3F9X', 'tag: *one', '? tag\n: 7KQ3F9X', String.raw`"t\x61g": 7KQ3F9X`])
      expect(tagTokens(text).opaque).toBe(true)
  })
})
