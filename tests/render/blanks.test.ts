import { describe, expect, it } from 'vitest'
import { fieldName, pieces } from '../../src/render/blanks.ts'

const blanks = (line: string) => pieces(line).flatMap(({ blank }) => (blank === undefined ? [] : [blank]))

describe('the blanks of a line', () => {
  it('are named by the words that ask for them', () => {
    expect(blanks('Set the clock. Found: ________ Left: ________')).toEqual(['Found', 'Left'])
    expect(blanks('Dig to root depth: dry, right or wet? ________')).toEqual(['dry, right or wet'])
  })

  it('share the words where one question asks for two', () => {
    expect(blanks('Readings: ________ and ________')).toEqual(['Readings', 'Readings'])
  })

  it('have no name where nothing asks for them', () => {
    expect(blanks('________')).toEqual([''])
  })

  it('stay on one line with the word before them', () => {
    expect(pieces('Old: ________ New: ________').map(one => one.text)).toEqual([
      'Old:\u00a0',
      '________',
      ' New:\u00a0',
      '________'
    ])
  })

  it('leave the words as they are', () => {
    for (const line of ['', 'Close every drain.', 'a_b __ c', 'Old: ________ New: ________.'])
      expect(
        pieces(line)
          .map(one => one.text)
          .join('')
          .replaceAll('\u00a0', ' ')
      ).toBe(line)
  })
})

describe('the name of a blank', () => {
  it('leaves out what is not there', () => {
    expect(fieldName('Visits', undefined, 'line 1', '')).toBe('Visits, line 1')
  })
})
