import { describe, expect, it } from 'vitest'
import { findNeedle, findSpelled, privateNeedles } from '../../../src/domain/privacy/needles.ts'

const needles = privateNeedles('depot locker 14, code 7719')

describe('a private text', () => {
  it('is looked for whole, by its parts and by what looks like a code', () => {
    expect(needles).toEqual(['depot locker 14, code 7719', 'depot locker 14', 'code 7719', '7719'])
  })

  it('is found where only the code was copied', () => {
    expect(findNeedle('Gate on the left (7719).', needles)).toBe('7719')
  })

  it('is found in other case and with other spaces', () => {
    expect(findNeedle('DEPOT\u00a0Locker  14', needles)).toBe('depot locker 14')
  })

  it('is not found inside a longer number or word', () => {
    expect(findNeedle('meter 177190', needles)).toBeUndefined()
    expect(findNeedle('locker 14', needles)).toBeUndefined()
  })

  it('short words do not make every page a leak', () => {
    expect(privateNeedles('14')).toEqual([])
  })

  it.each(['code 7 7 1 9', 'CODE: 77-19', 'Depot-Locker_14', 'depot.locker 14', 'the 77\u201319 gate'])(
    'is found as %j',
    text => {
      expect(findSpelled(text, needles)).toBeDefined()
    }
  )

  it.each(['7.719 L/min', '77,19', '2 77191', '177 19', 'locker 14'])('is not found in %j', text => {
    expect(findSpelled(text, needles)).toBeUndefined()
  })

  it('a telephone number is found by its figures, however they are set', () => {
    for (const text of ['(44) 1632-960.114', '441632960114', '+44 1632/960 114'])
      expect(findSpelled(text, privateNeedles('+44 1632 960 114')), text).toBeDefined()
  })

  it('a text of any length is known by its beginning', () => {
    const figures = '1'.repeat(9000)
    expect(findSpelled(figures.replaceAll('11', '1-1'), [figures])).toBeDefined()
    expect(findSpelled('1'.repeat(150), [figures])).toBeUndefined()
  })

  it('codes with marks are found', () => {
    expect(findNeedle('use C4471# at the roof', privateNeedles('roof door C4471#, alarm zone 3'))).toBe('c4471#')
  })
})
