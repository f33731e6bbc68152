import { describe, expect, it } from 'vitest'
import type { Section, TableBlock, Value } from '../../src/binder/blocks.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { CALCULATIONS } from '../../src/domain/list.ts'
import { date } from '../../src/units/date.ts'

const NAMES = new Set(CALCULATIONS.map(one => one.name))
const demos = assessFleet('sites', date('2026-05-01')).sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))

/** Counts and sums of what stands in the same section, with nothing behind them that a formula would explain. */
const COUNTED = ['as-installed', 'calendar', 'changes', 'spares']

interface Found {
  readonly section: string
  readonly table?: TableBlock
  readonly value: Value
}

/** Every value of a section that is marked as computed, wherever it stands. */
function computedIn(section: Section): Found[] {
  const found: Found[] = []
  const walk = (part: unknown, table?: TableBlock): void => {
    if (Array.isArray(part)) for (const one of part as unknown[]) walk(one, table)
    else if (typeof part === 'object' && part !== null) {
      const own = 'kind' in part && part.kind === 'table' ? (part as TableBlock) : table
      if ('standing' in part && part.standing === 'computed')
        found.push({ section: section.id, value: part as Value, ...(own ? { table: own } : {}) })
      else for (const one of Object.values(part)) walk(one, own)
    }
  }
  walk(section.blocks)
  return found
}

/** The calculation that the value names, or those that the notes of its table name. */
function namesOf({ value, table }: Found): readonly string[] {
  if (value.note !== undefined && NAMES.has(value.note)) return [value.note]
  return (table?.notes ?? []).flatMap(note => note.split(/[^a-z0-9-]+/u).filter(word => NAMES.has(word)))
}

describe.each(demos.map(context => ({ id: context.site.id, context })))('the binder of $id', ({ context }) => {
  const binder = makeBinder(context)
  const found = binder.sections.flatMap(computedIn)

  it('names a calculation for every value that it computed, one that calc knows', () => {
    const open = found.filter(one => !COUNTED.includes(one.section) && namesOf(one).length === 0)
    const told = open.map(({ section, table, value }) => `${section}: ${table?.caption ?? ''}: ${value.text}`)
    expect([...new Set(told)]).toEqual([])
    expect(found.length).toBeGreaterThan(100)
  })

  it('shows no working of a calculation that calc does not know', () => {
    expect(context.plan.workings.map(one => one.calculation).filter(name => !NAMES.has(name))).toEqual([])
  })

  it('shows the working of loops, minutes and peaks wherever it prints them', () => {
    const printed = new Set(found.flatMap(namesOf))
    const worked = new Set(context.plan.workings.map(one => one.calculation))
    const always = ['wire-loop', 'monthly-minutes', 'supply-peak'].filter(name => printed.has(name))
    expect(always.filter(name => !worked.has(name))).toEqual([])
  })
})
