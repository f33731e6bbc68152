import { describe, expect, it } from 'vitest'
import { killRuns } from './kills.ts'

// The long run: npx tsx tests/faults/run.ts --kills 200 --seed 1

describe('a run that is killed at any moment', () => {
  it('leaves every site file and the last good output whole, no browser behind it, and lets the next run do its work', async () => {
    const { failures, kills, recoveries } = await killRuns({ kills: 5, seed: 4 })
    expect(failures).toEqual([])
    expect([kills, recoveries]).toEqual([5, 1])
  }, 300_000)
})
