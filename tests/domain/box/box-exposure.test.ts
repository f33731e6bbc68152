import { expect, test } from 'vitest'
import { statedExposures } from '../../../src/domain/box/box-exposure.ts'

const exposures = (...texts: (string | undefined)[]) => statedExposures(texts).map(one => one.exposure)

test.each([
  ['hosed down by the street crew', 'jets'],
  ['pressure-washed each spring', 'powerful jets'],
  ['in the way of street cleaning', 'powerful jets'],
  ['Floods after rain', 'temporary immersion'],
  ['fills with water in winter', 'temporary immersion'],
  ['stands in water all year', 'continuous immersion'],
  ['always under water', 'continuous immersion']
])('"%s" says %s', (text, exposure) => {
  expect(exposures(text)[0]).toBe(exposure)
})

test.each([
  'center island, north-east',
  'near the river',
  'never floods',
  'no standing water',
  'drains well, not under water',
  'wasps in summer'
])('"%s" says nothing of the kind', text => {
  expect(exposures(text)).toEqual([])
})

test('each exposure stands once, with the words that said it first', () => {
  expect(statedExposures([undefined, 'floods', 'hosed down', 'flooded last year'])).toEqual([
    { exposure: 'jets', said: 'hosed down' },
    { exposure: 'temporary immersion', said: 'floods' }
  ])
})
