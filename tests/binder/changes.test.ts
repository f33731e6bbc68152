import { describe, expect, it } from 'vitest'
import { changesSection } from '../../src/binder/sections/changes.ts'
import type { Visit } from '../../src/model/site.ts'
import { date } from '../../src/units/date.ts'
import { contexts } from '../export/due-fixture.ts'

const AT = { file: '', path: [] }
const visit = (on: string, stated: Partial<Visit> = {}): Visit => ({
  at: AT,
  on: date(on),
  batteries: [],
  readings: [],
  found: [],
  done: [],
  open: [],
  ...stated
})

/** The rows of the tables of the section, as text. */
function tables(visits: readonly Visit[], issued?: string): string[][] {
  const context = contexts.find(one => one.site.id === 'brindle-common')
  if (!context) throw new Error('no site')
  const { issued: _, ...site } = context.site
  const now = { ...site, visits, ...(issued ? { issued: date(issued) } : {}) }
  return changesSection({ ...context, site: now }).blocks.flatMap(block =>
    block.kind === 'table' ? [block.rows.map(row => row.map(value => value.text).join(' | '))] : []
  )
}

describe('what changed since the last issue', () => {
  const before = visit('2026-01-15', { done: ['old'] })
  const after = visit('2026-03-20', {
    batteries: [{ at: AT, controller: 'P1', fitted: date('2026-03-20'), kind: 'AA alkaline', count: 4 }],
    programs: [{ at: AT, controller: 'P1', clock: '4 min fast', found: 'A at 60 %', left: 'A at 100 %' }],
    tests: [{ at: AT, supply: 'S1', passed: true, tester: 'J. Sample' }],
    parts: [{ at: AT, item: 'diaphragm', count: 2 }],
    boxes: ['BB6'],
    done: ['cleaned BB6'],
    drawingChange: true,
    open: ['thicker wire to P1-Z6']
  })

  it('is what visits after the day of issue did, and nothing of that day or before', () => {
    const [changes, open] = tables([before, after], '2026-01-15')
    expect(changes).toEqual([
      '2026-03-20 | P1 | 4 × AA alkaline fitted; clock 4 min fast; found: A at 60 %; left: A at 100 %',
      '2026-03-20 | S1 | backflow test passed, J. Sample',
      '2026-03-20 | BB6 | 2 × diaphragm put in; cleaned BB6; the record drawing has to be changed'
    ])
    expect(open).toEqual(['thicker wire to P1-Z6 | 2026-03-20 | 42 | not supplied'])
  })

  it('is everything where the day of issue is not known, the newest first', () => {
    expect(tables([before, visit('2026-02-01', { done: ['new'] })])[0]?.map(row => row.slice(0, 10))).toEqual([
      '2026-02-01',
      '2026-01-15'
    ])
  })

  it('is nothing, and says so, where no visit came after', () => {
    expect(tables([before], '2026-01-15')).toEqual([])
  })

  it('leaves out visits that have not happened yet', () => {
    expect(tables([visit('2026-05-02', { done: ['to come'], open: ['x'] })])).toEqual([])
  })
})
