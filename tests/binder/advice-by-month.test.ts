import { describe, expect, it } from 'vitest'
import type { Block } from '../../src/binder/blocks.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

const KEYS = `controllers:
  - { id: K1, box: VB1, supply: S1, sheet: _shared/sheets/plain.md, clock: { daylight-saving: by itself }, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 45 min } }] }
stations:
  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 12 L/min }, area: 120 m², plants: { factor: 0.5 } }
`

function adviceBlocks(sheet: string): readonly Block[] {
  const { site, faults } = loadSite(baseSite(KEYS, { sheet }))
  if (!site) throw new Error(JSON.stringify(faults))
  const plan = makePlan(site, date(BASE_ON))
  const context = {
    site,
    plan,
    findings: [],
    words: EN_US,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0',
    prints: []
  }
  return makeBinder(context).sections.find(one => one.id === 'advice')?.blocks ?? []
}

const tableOf = (blocks: readonly Block[]) =>
  blocks.find(one => one.kind === 'table' && one.caption?.includes('minutes to key in') === true)
const percentOf = (blocks: readonly Block[]) =>
  blocks.flatMap(one => (one.kind === 'card-pair' ? one.right.lines : [])).find(one => one.label === 'Monthly percent')

describe('a controller that has no monthly percent', () => {
  it('is given the minutes of each month in a table below its card, dry months as a dash', () => {
    const blocks = adviceBlocks('monthly-percent: no\n')
    const table = tableOf(blocks)
    if (table?.kind !== 'table') throw new Error('no table')
    expect(table.columns).toHaveLength(13)
    const [first] = table.rows
    // Half of 62 mm at 6 mm/h over the 15 waterings of April is 20.7 min, of 112 mm over the 15.5 of July 36.1 min; the season ends on 15 October.
    expect(first?.map(one => one.text)).toEqual([
      '1',
      '–',
      '–',
      '–',
      '21',
      '30',
      '35',
      '37',
      '30',
      '20',
      '11',
      '–',
      '–'
    ])
    expect(percentOf(blocks)?.value).toBe('none: key in the minutes of each month')
  })

  it('others keep their percents and have no such table', () => {
    const blocks = adviceBlocks('')
    expect(tableOf(blocks)).toBeUndefined()
    expect(percentOf(blocks)?.value).toContain('Jul\u00a0100')
  })
})
