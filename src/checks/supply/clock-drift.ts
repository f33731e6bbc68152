import type { Site } from '../../model/site.ts'
import type { DriftPlan } from '../../plan/clock-drift.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText, show, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const clockDrift: SiteCheck = {
  card: {
    code: 'supply/clock-drift',
    severity: 'note',
    looksAt:
      'Controllers that share a supply and fit by their programs: whether they still fit when each clock is off by what it drifts between two settings.',
    why: 'Separate clocks know nothing of each other. Runs that lie a few minutes apart meet when one clock is slow and the other fast.',
    sources: ['site-record', 'project-rule'],
    fix: 'Leave more minutes between the controllers, or set the clocks more often.',
    worked: {
      example: `supplies: [{ id: S1, kind: potable, limit: 30 L/min }]
controllers:
  - { id: K1, box: VB1, clock: { daylight-saving: by itself, drift: 2 min }, programs: [{ id: A, days: every day, starts: ["22:00"], stations: { 1: 50 min } }] }
  - { id: K2, box: VB2, clock: { daylight-saving: by itself, drift: 2 min }, programs: [{ id: A, days: every day, starts: ["23:00"], stations: { 1: 50 min } }] }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, normal-flow: 20 L/min } }
  - { id: K2/1, zone: Z2, valve: { box: VB2, normal-flow: 20 L/min } }`,
      instead: `supplies: [{ id: S1, kind: potable, limit: 30 L/min }]
controllers:
  - { id: K1, box: VB1, clock: { daylight-saving: by itself, drift: 2 min }, programs: [{ id: A, days: every day, starts: ["22:00"], stations: { 1: 50 min } }] }
  - { id: K2, box: VB2, clock: { daylight-saving: by itself, drift: 2 min }, programs: [{ id: A, days: every day, starts: ["23:20"], stations: { 1: 50 min } }] }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, normal-flow: 20 L/min } }
  - { id: K2/1, zone: Z2, valve: { box: VB2, normal-flow: 20 L/min } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const supply of site.supplies) {
      const drift = plan.drifts.get(supply.id)
      if (!drift) continue
      const apart = Math.max(...drift.driftS.values()) / 60
      const both = [...drift.driftS.values()].reduce((a, b) => a + b, 0) / 60
      const { limit, zonesAtOnce } = supply
      const most =
        drift.over === 'limit' && limit
          ? `together draw ${show(drift.flowM3s, 'flow', site.units)}; the limit is ${showStated(limit)}`
          : `run at once; ${zonesAtOnce} at a time is the most`
      report({
        subject: supply.id,
        at: at(supply, drift.over === 'limit' ? 'limit' : 'zones-at-once'),
        message: `${supply.id}: a clock may be off by ${roundedText(apart, 1)}\u00a0min before it is set again. Then ${zonesText(drift, site)} may meet, first on ${drift.on}, and ${most}.`,
        fix: `Leave ${roundedText(Math.ceil(both), 0)}\u00a0min between one controller and the next, or set the clocks more often.`,
        values: {
          drift_min: apart,
          flow_l_per_min: fromSi(drift.flowM3s, 'L/min', 'flow'),
          stations: drift.stations.length,
          first_on: drift.on
        }
      })
    }
  }
}

function zonesText({ stations }: DriftPlan, site: Site): string {
  const zones = stations.map(id => site.stations.find(one => one.id === id)?.zone ?? id)
  return zones.length < 2 ? zones.join('') : `${zones.slice(0, -1).join(', ')} and ${zones.at(-1)}`
}
