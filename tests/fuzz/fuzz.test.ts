import { describe, expect, it } from 'vitest'
import { KINDS } from './mutations.ts'
import { ALL_KINDS, makeCase, runCases } from './run-cases.ts'
import { seeds } from './seeds.ts'

// The long run: npx tsx tests/fuzz/run.ts --cases 50000 --seed 1

describe('a folder of sites that was harmed', () => {
  it('is read, told of or refused, in 600 ways of every kind: nothing throws, nothing is left, every finding has its place', async () => {
    const small = ['started', 'minimal']
    const many = await runCases({ cases: 500, seed: 11, seeds: small, kinds: KINDS, deepEvery: 50 })
    const real = await runCases({ cases: 100, seed: 12, deepEvery: 50, commandEvery: 33 })
    expect([...many.failures, ...real.failures]).toEqual([])
    expect(Object.keys(real.byKind).sort()).toEqual([...ALL_KINDS].sort())
    for (const outcome of ['read', 'told']) expect(many.outcomes[outcome], outcome).toBeGreaterThan(80)
  }, 300_000)

  it('is the same folder for the same seed and number', () => {
    const [one, other] = [seeds(), seeds()].map(from => makeCase(3, 77, from))
    const plain = (of: typeof one) => [...(of?.image ?? [])].map(([path, entry]) => [path, JSON.stringify(entry)])
    expect(plain(one)).toEqual(plain(other))
    expect(plain(one)).not.toEqual(plain(makeCase(4, 77, seeds())))
  })
})
