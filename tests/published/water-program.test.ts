import { describe, expect, it } from 'vitest'
import { BITS, off } from './water/row.ts'
import { WATER_ROWS } from './water/water-rows.ts'

describe(`rates, run times, cycles, rain, budgets and pipes against published figures (${WATER_ROWS.length} values)`, () => {
  it.each(WATER_ROWS)('$calculation: $what is $published ($source), within $tolerance, $because', row => {
    expect(off(row), `${row.actual} against ${row.published}`).toBeLessThanOrEqual(row.tolerance + BITS)
  })
})
