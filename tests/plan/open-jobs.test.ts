import { describe, expect, it } from 'vitest'
import type { Visit } from '../../src/model/site.ts'
import { openJobs } from '../../src/plan/open-jobs.ts'
import { date } from '../../src/units/date.ts'

const visit = (on: string, stated: Partial<Visit>): Visit => ({
  at: { file: `sites/a/visits/${on}.md`, path: [] },
  on: date(on),
  batteries: [],
  readings: [],
  found: [],
  done: [],
  open: [],
  ...stated
})
const ON = date('2026-05-01')

describe('what is still open', () => {
  it('stands once, since the first visit that left it open, and belongs to whom the last one names', () => {
    const visits = [
      visit('2025-10-20', { open: ['Coil of Z3 to be read'] }),
      visit('2026-03-02', { open: ['coil of  Z3 to be read'], owner: 'Example Landscapes' })
    ]
    expect(openJobs({ visits }, ON)).toEqual([
      { text: 'coil of  Z3 to be read', since: '2025-10-20', owner: 'Example Landscapes' }
    ])
  })

  it('is closed by the visit that repairs it, and opens anew where it is named again', () => {
    const left = visit('2025-10-20', { open: ['a', 'b'] })
    const repaired = visit('2026-03-02', { repaired: ['A'] })
    expect(openJobs({ visits: [left, repaired] }, ON).map(job => job.text)).toEqual(['b'])
    const again = visit('2026-04-02', { open: ['a'] })
    expect(openJobs({ visits: [left, repaired, again] }, ON).map(job => job.since)).toEqual([
      '2025-10-20',
      '2026-04-02'
    ])
    expect(openJobs({ visits: [visit('2026-04-02', { open: ['a'], repaired: ['a'] })] }, ON)).toHaveLength(1)
  })

  it('knows nothing of visits that have not happened yet', () => {
    const visits = [visit('2026-05-01', { open: ['a'] }), visit('2026-05-02', { open: ['b'], repaired: ['a'] })]
    expect(openJobs({ visits }, ON).map(job => job.text)).toEqual(['a'])
  })
})
