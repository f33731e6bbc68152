import { describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { indexBlock } from '../../src/binder/index-entries.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { date } from '../../src/units/date.ts'

const [context] = assessFleet('sites', date('2026-05-01'), ['kestrel-cross']).sites.flatMap(one =>
  contextOf(one, 'HTTPS://EXAMPLE.ORG')
)

describe('the index', () => {
  it('names a box where it stands as a word of its own, and passes over a name that is nothing', () => {
    if (!context) throw new Error('No site.')
    const { sections } = makeBinder(context)
    const named = (names: readonly string[]): string[] => {
      const supplies = names.flatMap(id => context.site.supplies.slice(0, 1).map(one => ({ ...one, id })))
      return indexBlock({ ...context.site, supplies }, sections, context.words).entries.map(({ name }) => name)
    }
    expect(named(['VB1', '', 'B1', 'VB'])).toContain('VB1')
    for (const nothing of ['', 'B1', 'VB']) expect(named(['VB1', '', 'B1', 'VB'])).not.toContain(nothing)
  })
})
