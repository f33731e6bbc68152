import { expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { checklistsSection } from '../../src/binder/sections/checklists.ts'
import { date } from '../../src/units/date.ts'

it('a station with two valves is expected to draw what both draw: 4 and 4 L/min are 8', () => {
  const [context] = assessFleet('sites', date('2026-05-01'), ['marram-steps']).sites.flatMap(one =>
    contextOf(one, 'HTTPS://EXAMPLE.ORG')
  )
  if (!context) throw new Error('No site.')
  const valves = context.site.stations.find(({ id }) => id === 'M2/2')?.valves ?? []
  expect(valves.map(({ normalFlow }) => normalFlow?.value)).toEqual([4, 4])
  const rows = checklistsSection(context).blocks.flatMap(block => (block.kind === 'table' ? block.rows : []))
  const row = rows.find(([first]) => first?.text === 'M2/2')
  expect(row?.map(({ text }) => text.replace('\u00a0', ' '))).toContain('(8 L/min)')
})
