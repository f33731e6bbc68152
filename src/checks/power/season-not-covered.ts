import { isPresent } from '../../base/absent.ts'
import type { Season } from '../../model/site.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import { date, daysBetween, inSeason } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { visitText } from './visit-text.ts'

export const seasonNotCovered: SiteCheck = {
  card: {
    code: 'power/season-not-covered',
    severity: 'note',
    looksAt: 'A battery that falls due inside the watering season.',
    why: 'It would have to be changed in the middle of the season; changed at the start, one set lasts through it.',
    sources: ['common-practice'],
    fix: 'Change it at the last regular visit before: the one that starts the season, or a task of the maintenance plan.',
    worked: {
      on: '2026-03-01',
      example: `season: { from: 04-01, to: 10-15 }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2025-07-14, interval: 12 months } }`,
      instead: `season: { from: 04-01, to: 10-15 }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-01-14, interval: 12 months } }`
    }
  },
  run: ({ site, plan }, report) => {
    const { season } = site
    if (!season) return
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || !isPresent(battery.dueOn) || battery.state === 'overdue' || battery.state === 'none') continue
      if (!inSeason(battery.dueOn.slice(5), season)) continue
      // Where no regular visit is left before it, the battery's own due date says all there is to say.
      if (battery.doAt?.because === 'none before due' && battery.state === 'due-soon') continue
      const when = visitText(battery.doAt)
      const [lasts, needed] = [lastsDays(battery), seasonDays(season)]
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'fitted'),
        message: `${controller.id}: the battery is due ${battery.dueOn}, inside the watering season (${season.from} to ${season.to}).`,
        fix:
          lasts === undefined || lasts >= needed
            ? `Change it ${when}; one set then lasts through the season.`
            : `One set lasts ${lasts} days and the season ${needed}: plan a change inside it, and one ${when}.`,
        values: { due_on: battery.dueOn, season_from: season.from, season_to: season.to }
      })
    }
  }
}

/** By pulses, charge or interval, whichever is shortest; undefined where none is known. */
function lastsDays({ fitted, pulses, charge, intervalDueOn }: BatteryPlan): number | undefined {
  const interval = fitted && intervalDueOn ? daysBetween(fitted, intervalDueOn) : undefined
  const known = [pulses?.lifeDays, charge?.days, interval].filter(days => days !== undefined)
  return known.length === 0 ? undefined : Math.min(...known)
}

/** First and last day among them, counted in a year without a leap day. */
function seasonDays({ from, to }: Season): number {
  const [first, last] = [
    date(`2025-${from === '02-29' ? '02-28' : from}`),
    date(`2025-${to === '02-29' ? '02-28' : to}`)
  ]
  return daysBetween(first, last) + 1 + (from > to ? 365 : 0)
}
