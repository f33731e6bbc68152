import { atLeast } from '../../domain/within.ts'
import { OHM_READINGS } from '../../model/site.ts'
import { OHM_WORDS } from '../../plan/trends.ts'
import type { TrendPoint } from '../../plan/trends.ts'
import { showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { READS_THE_SAME_WITHIN } from '../valve/readings.ts'
import { stationName, stationsInService } from './subject.ts'

/** So many readings, each farther off than the one before, are a drift and not chance. Rule of this project. */
const LEAST_READINGS = 3
/** A tenth off the first reading is worth a look while the valve still works. Rule of this project. */
const DRIFT = 0.1

export const readingDrifts: SiteCheck = {
  card: {
    code: 'wire/reading-drifts',
    severity: 'note',
    looksAt:
      'The readings of a pair over the visits, at 20 °C where temperatures are on file: three or more, each farther off the first than the one before, and the last by 10 % or more.',
    why: 'A splice that takes water or a coil that ages shows for seasons before the valve stops.',
    sources: ['nbs-100', 'project-rule'],
    fix: 'Open the splices of this pair at the next visit and measure on both sides of each.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    wire: [{ size: 1.5 mm², length: 3 m }]
    readings: [{ on: 2024-03-20, loop: 6.1 ohm }, { on: 2025-03-20, loop: 6.4 ohm }, { on: 2026-03-20, loop: 6.8 ohm }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    wire: [{ size: 1.5 mm², length: 3 m }]
    readings: [{ on: 2024-03-20, loop: 6.1 ohm }, { on: 2025-03-20, loop: 6.2 ohm }, { on: 2026-03-20, loop: 6.1 ohm }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const trends = plan.trends.get(station.id)
      const what = OHM_READINGS.find(one => trends && isDrift(trends[one]))
      const points = what && trends ? trends[what] : []
      const [first, last] = [points[0], points.at(-1)]
      if (!what || !first || last?.change === undefined) continue
      const percent = Math.round(Math.abs(last.change) * 100)
      report({
        subject: station.zone,
        at: last.at,
        message:
          `${stationName(station)}: the ${OHM_WORDS[what]} drifts: ${showStated(first.ohm)} on ${first.on}, ${showStated(last.ohm)} on ${last.on}, ` +
          `${percent}\u00a0% ${last.change > 0 ? 'more' : 'less'}${first.at20Ohm !== undefined && last.at20Ohm !== undefined ? ' at 20\u00a0°C' : ''}, each reading of ${points.length} farther off.`,
        fix:
          last.change > 0
            ? 'Open the splices of this pair at the next visit, measure on both sides of each, and make the wet one again.'
            : 'Look for wires that touch or a coil that shorts: measure the coil alone at the next visit.',
        values: { change_percent: last.change * 100, readings: points.length }
      })
    }
  }
}

/** Past 20 % another check speaks. */
function isDrift(points: readonly TrendPoint[]): boolean {
  const changes = points.map(point => point.change ?? 0)
  const last = changes.at(-1) ?? 0
  if (points.length < LEAST_READINGS || !atLeast(Math.abs(last), DRIFT)) return false
  if (Math.abs(last) > READS_THE_SAME_WITHIN) return false
  return changes.every((change, index) => index === 0 || (change - (changes[index - 1] ?? 0)) * Math.sign(last) > 0)
}
