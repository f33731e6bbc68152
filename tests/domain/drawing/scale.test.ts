import { describe, expect, it } from 'vitest'
import { chooseScale } from '../../../src/domain/drawing/scale.ts'

const FRAMES = [
  { widthMm: 160, heightMm: 200 },
  { widthMm: 200, heightMm: 140 }
] as const

describe('the scale of a sheet', () => {
  it('is the largest that holds the ground, exactly at the edge of the frame too', () => {
    expect(chooseScale(16, 20, FRAMES, 'metric')).toEqual({ ratio: 100, frame: 0 })
    expect(chooseScale(16, 20.01, FRAMES, 'metric')).toEqual({ ratio: 200, frame: 0 })
  })

  it('turns the sheet where that gives a larger scale', () => {
    expect(chooseScale(20, 13, FRAMES, 'metric')).toEqual({ ratio: 100, frame: 1 })
  })

  it('is a whole number of feet to an inch in US units: 96 ft at 1 in = 20 ft', () => {
    expect(chooseScale(96 * 0.3048, 50 * 0.3048, FRAMES, 'us').ratio).toBe(240)
  })

  it('takes a single spot at the largest scale, and more ground than any sheet at the smallest', () => {
    expect(chooseScale(0, 0, FRAMES, 'metric').ratio).toBe(50)
    expect(chooseScale(1e6, 1, FRAMES, 'metric').ratio).toBe(10_000)
  })
})
