import { atMost } from '../../domain/within.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { minutesText } from '../schedule/hours.ts'
import { stationName } from '../wire/subject.ts'
import { monthName } from './month-name.ts'
import { MOST_SHARE, setAgainstNeed } from './set-against-need.ts'

export const overNeed: SiteCheck = {
  card: {
    code: 'water/over-need',
    severity: 'note',
    looksAt:
      'The minutes set for a watering day in the month of the greatest need, where they are more than twice what the plants need by reference evapotranspiration, plant factor and efficiency. Bubblers are not judged by it.',
    why: 'Water that no plant uses drains away, costs money and drowns roots. Within twice the need, plant factor and weather may account for it.',
    sources: ['site-record', 'wucols-guide', 'wucols-classes', 'project-rule'],
    fix: 'See whether plant factor, efficiency, area and flow are right; then bring the run time down in steps and watch the plants.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 90 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 40 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { station, written, month, setS, needS } of setAgainstNeed(site, plan)) {
      if (atMost(setS, MOST_SHARE * needS)) continue
      const need = minutesText(needS / 60)
      const [timesText] = toldApart(setS / needS, MOST_SHARE, 1)
      report({
        subject: station.zone,
        at: at(written),
        message: `${stationName(station)}: in ${monthName(month)} ${minutesText(setS / 60)} are set for a watering day, ${timesText} times the ${need} that the plants need.`,
        fix: `Look at plant factor, efficiency and area; if they are right, bring it down in steps toward ${need}.`,
        values: { set_min: setS / 60, need_min: needS / 60, month: monthName(month) }
      })
    }
  }
}
