import { describe, expect, it } from 'vitest'
import { CLIMATE_ROWS } from './water/climate-rows.ts'
import { BITS, off } from './water/row.ts'

describe(`sun and reference evapotranspiration against published figures (${CLIMATE_ROWS.length} values)`, () => {
  it.each(CLIMATE_ROWS)('$calculation: $what is $published ($source), within $tolerance, $because', row => {
    expect(off(row), `${row.actual} against ${row.published}`).toBeLessThanOrEqual(row.tolerance + BITS)
  })

  it('the 48 days of the record come within 0.06 mm a day, and none of them is left out', () => {
    const record = CLIMATE_ROWS.filter(row => row.what.includes('of the record'))
    expect(record).toHaveLength(48)
    expect(Math.max(...record.map(off))).toBeLessThanOrEqual(0.06)
  })
})
