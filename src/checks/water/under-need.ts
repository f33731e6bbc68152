import { atLeast } from '../../domain/within.ts'
import { show } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { minutesText } from '../schedule/hours.ts'
import { stationName } from '../wire/subject.ts'
import { monthName } from './month-name.ts'
import { LEAST_SHARE, setAgainstNeed } from './set-against-need.ts'

export const underNeed: SiteCheck = {
  card: {
    code: 'water/under-need',
    severity: 'note',
    looksAt:
      'The minutes set for a watering day in the month of the greatest need, where they are less than half of what the plants need by reference evapotranspiration, plant factor and efficiency, rain not counted unless it is stated. Bubblers are not judged by it.',
    why: 'Plants that get less than half of what they use live on rain and on what the soil has left, and fail in the first dry month.',
    sources: ['site-record', 'wucols-guide', 'wucols-classes', 'project-rule'],
    fix: 'See whether plant factor, efficiency, area and flow are right, and whether rain is meant to give the rest; then set longer runs or add days.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 12 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 30 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { station, written, month, setS, needS } of setAgainstNeed(site, plan)) {
      if (atLeast(setS, LEAST_SHARE * needS)) continue
      const need = minutesText(needS / 60)
      report({
        subject: station.zone,
        at: at(written),
        message: `${stationName(station)}: in ${monthName(month)} ${minutesText(setS / 60)} are set for a watering day, ${show(setS / needS, 'percent', site.units)} of the ${need} that the plants need.`,
        fix: `Look at plant factor, efficiency and area; if they are right and rain does not give the rest, set up to ${minutesText((needS - setS) / 60)} more, or add days.`,
        values: { set_min: setS / 60, need_min: needS / 60, month: monthName(month) }
      })
    }
  }
}
