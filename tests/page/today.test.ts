import { describe, expect, it } from 'vitest'
import type { ScriptController } from '../../src/binder/pages.ts'
import { localDay, namedDay } from '../../src/page/local-day.ts'
import { todayLines } from '../../src/page/today.ts'
import { fill } from '../../src/page/words.ts'
import { date } from '../../src/units/date.ts'
import { pageWords } from '../../src/words/en-US/pages.ts'
import { BOX_METRIC, BOX_US } from '../look/box-pages.ts'

const [metric] = BOX_METRIC.script.controllers as [ScriptController]
const [us] = BOX_US.script.controllers as [ScriptController]
const on = (controller: ScriptController, day: string) => todayLines(controller, date(day), pageWords.script)

describe('the lines of the day', () => {
  it('one a station, with its cycles; then when each of the others opens next', () => {
    expect(on(metric, '2026-07-01')).toEqual([
      'A · 1 Z1 · groundcover, drip: 23:10–23:35',
      'A · 2 Z2 · shrubs, drip: 23:35–00:00',
      'A · 3 Z3 · meadow, spray: next Thu 2026-07-02, 00:00',
      'A · 4 Z4 · splitter island: next Thu 2026-07-02, 00:06'
    ])
    expect(on(metric, '2026-07-02').slice(0, 2)).toEqual([
      'A · 3 Z3 · meadow, spray: 00:00–00:06, 00:36–00:42',
      'A · 4 Z4 · splitter island: 00:06–00:16'
    ])
  })

  it('in the clock of the site', () => {
    expect(on(us, '2026-05-02')).toEqual(['A · 1 Z4 · shrubs: 10:30\u00a0pm–11:15\u00a0pm'])
  })

  it('on a dry day, when it runs next', () => {
    expect(on(us, '2026-05-01')).toEqual([
      'No watering today.',
      'A · 1 Z4 · shrubs: next Sat 2026-05-02, 10:30\u00a0pm'
    ])
    expect(on(metric, '2026-11-25').slice(0, 2)).toEqual([
      'No watering today.',
      'A · 1 Z1 · groundcover, drip: next Thu 2027-04-01, 23:10'
    ])
  })

  it('each station that has had its turn today, when it opens next', () => {
    const evening = (time: number) => todayLines(us, date('2026-05-02'), pageWords.script, time * 60)
    expect(evening(22 * 60 + 30)).toHaveLength(1)
    expect(evening(22 * 60 + 31)[1]).toMatch(/^A · 1 Z4 · shrubs: next /u)
  })

  it('without a program, that none will come', () => {
    expect(on({ ...us, programs: [] }, '2026-05-01')).toEqual([
      'No watering today.',
      'No watering day in the year to come.'
    ])
  })

  it('out of service is said first', () => {
    expect(on({ ...us, outOfService: 'street works' }, '2026-05-02')).toEqual(['Out of service.'])
  })
})

describe('the day on the wall', () => {
  it('is that of the phone, late in the evening too', () => {
    expect(localDay(new Date(2026, 4, 1, 23, 59))).toBe('2026-05-01')
    expect(localDay(new Date(2028, 1, 29, 0, 0))).toBe('2028-02-29')
  })

  it('is named by its weekday', () => {
    expect(namedDay(date('2026-05-01'), pageWords.script)).toBe('Fri 2026-05-01')
    expect(namedDay(date('2026-05-03'), {})).toBe('2026-05-03')
  })

  it('a word that is missing leaves nothing behind', () => {
    expect(fill(undefined, { n: 1 })).toBe('')
    expect(fill('{n} of {all}', { n: 1 })).toBe('1 of ')
  })
})
