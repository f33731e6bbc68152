import { isPresent } from '../../base/absent.ts'
import { inSeason } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const seasonNotCovered: SiteCheck = {
  card: {
    code: 'power/season-not-covered',
    severity: 'note',
    looksAt: 'A battery that falls due inside the watering season.',
    why: 'It would have to be changed in the middle of the season; changed at the start, one set lasts through it.',
    sources: ['common-practice'],
    fix: 'Change it at the visit that starts the season.',
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
  run: ({ site, plan, on }, report) => {
    const { season } = site
    if (!season) return
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      if (!battery || !isPresent(battery.dueOn) || battery.state === 'overdue' || battery.state === 'none') continue
      if (!inSeason(battery.dueOn.slice(5), season)) continue
      const year = battery.dueOn.slice(0, 4)
      const start = `${season.from <= battery.dueOn.slice(5) ? year : Number(year) - 1}-${season.from}`
      // Once the season has begun the start-up visit is past; the battery's own due date then says all there is to say.
      if (start <= on && battery.state === 'due-soon') continue
      const when = start > on ? `at the start-up visit, by ${start}` : 'at the next visit'
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'fitted'),
        message: `${controller.id}: the battery is due ${battery.dueOn}, inside the watering season (${season.from} to ${season.to}).`,
        fix: `Change it ${when}; one set then lasts through the season.`,
        values: { due_on: battery.dueOn, season_from: season.from, season_to: season.to }
      })
    }
  }
}
