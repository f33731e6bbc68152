import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { appendRecord, setValue } from '../../src/load/edit-front.ts'
import { readFrontMatter } from '../../src/load/front-matter.ts'

const BLOCK = `---
title: X # kept
boxes: # the boxes
  - id: VB1 # the first
    where: north # side
    ties: ["a", "b"]
  # between
  - id: VB2
    photos:
      - one.jpg # picture
      - two.jpg
# after
units: metric
---
Prose.
`

describe('a value set in a site file', () => {
  it('takes the place of what stood there, and its comment stays', () => {
    expect(setValue(BLOCK, ['boxes', 0], 'where', 'south: 1')).toBe(
      BLOCK.replace('where: north #', 'where: "south: 1" #')
    )
    expect(setValue(BLOCK, ['boxes', 0], 'ties', ['c, d', 'e'])).toBe(BLOCK.replace('["a", "b"]', '["c, d", e]'))
  })

  it('goes behind the last key of its record where it is new', () => {
    expect(setValue(BLOCK, ['boxes', 0], 'lid', 'bolted')).toBe(
      BLOCK.replace('ties: ["a", "b"]\n', 'ties: ["a", "b"]\n    lid: bolted\n')
    )
    expect(setValue(BLOCK, ['boxes', 1], 'lid', 'bolted')).toBe(
      BLOCK.replace('two.jpg\n', 'two.jpg\n    lid: bolted\n')
    )
  })

  it('fills a blank, and goes into a record on one line', () => {
    expect(setValue('---\nb:\n  - id: A\n    where: # fill in\n---\n', ['b', 0], 'where', 'x')).toBe(
      '---\nb:\n  - id: A\n    where: x # fill in\n---\n'
    )
    expect(setValue('---\nb: [{ id: A }, { id: B }] # c\n---\n', ['b', 0], 'where', 'x')).toBe(
      '---\nb: [{ id: A, where: x }, { id: B }] # c\n---\n'
    )
  })

  it('is not set where what stands now runs over several lines, or where no record is', () => {
    expect(setValue(BLOCK, ['boxes', 1], 'photos', ['x.jpg'])).toBeUndefined()
    expect(setValue(BLOCK, ['boxes', 7], 'where', 'x')).toBeUndefined()
    expect(setValue('no front matter', [], 'where', 'x')).toBeUndefined()
  })
})

describe('a record put at the end of a list', () => {
  it('stands behind the last one, written as that one is', () => {
    expect(appendRecord(BLOCK, 'boxes', { id: 'VB3', where: 'x' })).toBe(
      BLOCK.replace('two.jpg\n', 'two.jpg\n  - id: VB3\n    where: x\n')
    )
    const flow = '---\nboxes:\n  - { id: VB1 } # first\n---\n'
    expect(appendRecord(flow, 'boxes', { id: 'VB2' })).toBe(
      '---\nboxes:\n  - { id: VB1 } # first\n  - { id: VB2 }\n---\n'
    )
  })

  it.each([
    ['---\ntitle: X\n---\n', '---\ntitle: X\nboxes:\n  - { id: A }\n---\n'],
    ['---\nboxes: # none yet\ntitle: X\n---\n', '---\nboxes: # none yet\n  - { id: A }\ntitle: X\n---\n'],
    ['---\nboxes: []\n---\n', '---\nboxes: [{ id: A }]\n---\n'],
    ['---\nboxes: [{ id: B }]\n---\n', '---\nboxes: [{ id: B }, { id: A }]\n---\n'],
    ['\ufeff---\r\nboxes:\r\n- id: B\r\n---\r\n', '\ufeff---\r\nboxes:\r\n- id: B\r\n- id: A\r\n---\r\n']
  ])('begins the list, or joins it however it is written: %j', (text, expected) => {
    expect(appendRecord(text, 'boxes', { id: 'A' })).toBe(expected)
  })

  it('reads back as it was given, whatever it holds, and takes no line away', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }), where => {
        const clean = where.replace(/[\p{Cc}\u2028\u2029\ufeff]/gu, ' ').trim()
        fc.pre(clean !== '' && !/^-?[\d.]+(?:e\d+)?$/iu.test(clean))
        const text = appendRecord(BLOCK, 'boxes', { id: 'VB3', where: clean }) ?? ''
        const boxes = readFrontMatter({ file: '', text }).data['boxes'] as unknown[]
        expect(boxes[2]).toEqual({ id: 'VB3', where: clean })
        expect(
          text
            .split('\n')
            .filter(line => BLOCK.includes(line))
            .join('\n')
        ).toContain('# between')
      })
    )
  })
})
