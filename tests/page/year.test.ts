import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { pageScriptData } from '../../src/binder/script-data.ts'
import type { PageContext } from '../../src/binder/context.ts'
import { loadOne } from '../../src/build/load-one.ts'
import { readFleet } from '../../src/build/read-fleet.ts'
import { expandYear } from '../../src/domain/schedule/expand-year.ts'
import { stationMonths } from '../../src/domain/schedule/months.ts'
import { DAY_S } from '../../src/domain/schedule/run-times.ts'
import type { Site } from '../../src/model/site.ts'
import { openingsOn } from '../../src/page/runs.ts'
import { monthLine } from '../../src/page/today.ts'
import { scheduledController } from '../../src/plan/schedules.ts'
import { date, epochDay, yearOf } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { pageWords } from '../../src/words/en-US/pages.ts'

const fleet = readFleet(join(import.meta.dirname, '../../sites'))
const sites = fleet.sites.flatMap(one => loadOne(one, fleet).site ?? [])

/** What the page of a box hands to its script, through JSON as on the page. */
function scriptOf(site: Site) {
  const plan = { on: date('2026-05-01'), batteries: new Map() } as unknown as PageContext['plan']
  const data = pageScriptData(site.controllers, { site, plan } as unknown as PageContext)
  return JSON.parse(JSON.stringify(data)) as typeof data
}

describe.each(sites.map(site => [site.id, site] as const))('the phone and the core, %s', (_, site) => {
  const script = scriptOf(site)
  const pairs = site.controllers.flatMap(one => {
    const told = script.controllers.find(each => each.controller === one.id)
    return told ? [{ one, told, scheduled: scheduledController(site, one) }] : []
  })

  // A common year from the day of the data, and a leap year.
  it.each([2026, 2028])('open the same valves at the same seconds on every day of %i', year => {
    expect(pairs.length).toBe(site.controllers.length)
    for (const { one, told, scheduled } of pairs.filter(each => each.one.outOfService === undefined)) {
      const from = Math.max(epochDay(date(`${year}-01-01`)), epochDay(date('2026-05-01')))
      const to = epochDay(date(`${year}-12-31`))
      const byDay = new Map<number, string[]>()
      for (const run of [year - 1, year].flatMap(each => expandYear(scheduled, each, site.season))) {
        const day = run.day + Math.floor(run.startS / DAY_S)
        const opening = `${run.program} ${run.station} ${run.startS % DAY_S}+${run.durationS}`
        byDay.set(day, [...(byDay.get(day) ?? []), opening])
      }
      for (let day = from; day <= to; day += 1) {
        const here = openingsOn(told, day).map(
          ({ program, station, fromS, toS }) => `${program} ${station} ${fromS}+${toS - fromS}`
        )
        expect(here.sort(), `${one.id}, day ${day}`).toEqual((byDay.get(day) ?? []).sort())
      }
    }
  })

  it('give each station the same minutes in every month', () => {
    for (const { one, told, scheduled } of pairs.filter(each => each.one.outOfService === undefined))
      for (let month = 1; month <= 12; month += 1) {
        const on = `2026-${String(month).padStart(2, '0')}-15` as IsoDate
        const minutes = new Map<number, number>()
        for (const row of stationMonths(scheduled, yearOf(on), site.season ? { season: site.season } : {}))
          minutes.set(row.station, (minutes.get(row.station) ?? 0) + (row.minutes[month - 1] ?? 0))
        const [line = ''] = monthLine(told, on, pageWords.script)
        const said = [...line.matchAll(/(\d+):\u00a0(\d+)/gu)].map(([, number, sum]) => [Number(number), Number(sum)])
        const expected = [...minutes].filter(([, sum]) => sum > 0).map(([number, sum]) => [number, Math.round(sum)])
        expect(said, `${one.id}, ${on}`).toEqual(expected.sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0)))
      }
  })
})
