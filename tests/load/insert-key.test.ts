import { describe, expect, it } from 'vitest'
import { insertKey } from '../../src/load/insert-key.ts'

const tag = { after: 'id', key: 'tag', value: '7KQ3F9X' }

describe('a key put into a site file', () => {
  it('goes on a line of its own after the key it follows, at its indent, before nothing else changes', () => {
    const text = '---\ntitle: X # kept\nboxes:\n  - id: VB1 # the first\n    where: north\n---\nProse.\n'
    expect(insertKey(text, { path: ['boxes', 0], ...tag })).toBe(
      '---\ntitle: X # kept\nboxes:\n  - id: VB1 # the first\n    tag: 7KQ3F9X\n    where: north\n---\nProse.\n'
    )
  })

  it('goes behind the value in a mapping written on one line', () => {
    const text = '---\nboxes:\n  - { id: VB1, where: north }\n  - { id: VB2, where: south }\n---\n'
    expect(insertKey(text, { path: ['boxes', 1], ...tag })).toContain('{ id: VB2, tag: 7KQ3F9X, where: south }')
  })

  it('keeps CRLF line ends and a byte-order mark', () => {
    const text = '\ufeff---\r\nboxes:\r\n  - id: VB1\r\n---\r\n'
    expect(insertKey(text, { path: ['boxes', 0], ...tag })).toBe(
      '\ufeff---\r\nboxes:\r\n  - id: VB1\r\n    tag: 7KQ3F9X\r\n---\r\n'
    )
  })

  it('changes the value where the key is there already', () => {
    const text = '---\nboxes:\n  - id: VB1\n    tag: ES5ZR42 # old\n---\n'
    expect(insertKey(text, { path: ['boxes', 0], ...tag })).toBe(
      '---\nboxes:\n  - id: VB1\n    tag: 7KQ3F9X # old\n---\n'
    )
  })

  it('is not done where the mapping is not there', () => {
    expect(insertKey('---\nboxes: []\n---\n', { path: ['boxes', 0], ...tag })).toBeUndefined()
    expect(insertKey('no front matter', { path: ['boxes', 0], ...tag })).toBeUndefined()
  })
})
