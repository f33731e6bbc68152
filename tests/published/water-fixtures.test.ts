import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { EXAMPLES, readFixture, weatherDays } from './water/fixtures.ts'

const REFERENCE = fileURLToPath(new URL('../../../shared/reference/', import.meta.url))

/** The file beside the checkout; where there is none, the committed copy stands alone. */
const beside = (name: string): string =>
  existsSync(`${REFERENCE}${name}`) ? readFileSync(`${REFERENCE}${name}`, 'utf8') : readFixture(name)

const found = existsSync(REFERENCE) ? 'beside this checkout' : 'NOT beside this checkout: only the copy is read'

describe(`the reference figures, ${found}`, () => {
  it('of weather are the same bytes, 48 whole days', () => {
    expect(readFixture('daily-weather-eto.csv')).toBe(beside('daily-weather-eto.csv'))
    const days = weatherDays()
    expect(days).toHaveLength(48)
    expect(days.flatMap(({ date: _, ...numbers }) => Object.values(numbers)).every(Number.isFinite)).toBe(true)
  })

  it('of worked examples are the same values, each with its source', () => {
    expect(EXAMPLES).toEqual(JSON.parse(beside('water-examples.json')))
    expect(EXAMPLES.filter(one => one.source.trim() === '')).toEqual([])
    expect(EXAMPLES.length).toBeGreaterThanOrEqual(26)
  })
})
