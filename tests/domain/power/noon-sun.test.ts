import { expect, test } from 'vitest'
import { darkestMonths, winterNoonSunDeg } from '../../../src/domain/power/noon-sun.ts'

// Noon altitude at the winter solstice is 90° − latitude − 23.44°; the rounded declination of the source is 0.01° off.
test.each([
  [54.97, 11.59],
  [-33.9, 32.66],
  [0, 66.56],
  [66.56, 0],
  [78, -11.44]
])('at %f° the sun of the shortest day stands %f° high at noon', (latitude, height) => {
  expect(Math.abs(winterNoonSunDeg(latitude) - height)).toBeLessThan(0.02)
})

test('the darkest months follow the hemisphere', () => {
  expect(darkestMonths(55)).toEqual([11, 12, 1])
  expect(darkestMonths(-34)).toEqual([5, 6, 7])
})
