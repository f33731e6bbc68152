import { isAbsent } from '../../base/absent.ts'
import { longestRunS } from '../../domain/water/soil-reservoir.ts'
import { wholeUp } from '../../domain/water/whole-up.ts'
import { atMost } from '../../domain/within.ts'
import type { Controller, Station } from '../../model/site.ts'
import type { ReservoirPlan, SetRun, WaterPlan } from '../../plan/plan.ts'
import { fromSi } from '../../units/quantity.ts'
import { unitFor } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { minutesText } from '../schedule/hours.ts'
import { stationName, stationsInService } from '../wire/subject.ts'
import { monthName } from './month-name.ts'
import { mostSet, runWritten, setRunText, stepOf } from './set-run.ts'

export const waterOverCapacity: SiteCheck = {
  card: {
    code: 'water/over-capacity',
    severity: 'warning',
    looksAt:
      'The depth that one watering puts on, all its cycles together, against what the root zone or the substrate can take up.',
    why: 'What comes on top drains away below the roots, with the feed in it, and does nothing for the plants.',
    sources: ['site-record', 'uc-davis-soil', 'ucanr-trials'],
    fix: 'Water for a shorter time and on more days. Where only the texture of the soil is stated, the most that it may hold is taken and this is a note: look at the soil first.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 60 L/min }, area: 160 m², soil: { texture: substrate, root-depth: 80 mm, available-water: 16 mm, allowable-depletion: 50 % } }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 60 L/min }, area: 160 m², soil: { texture: substrate, root-depth: 150 mm, available-water: 30 mm, allowable-depletion: 50 % } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const water = plan.water.get(station.id)
      const controller = site.controllers.find(one => one.id === station.controller)
      if (!water?.longestSet || !controller || isAbsent(water.appliedM) || isAbsent(water.reservoir)) continue
      const { appliedM, reservoir } = water
      // Of a texture the most it may hold, so that what is told drains away from any soil of its kind.
      const { atMostM: holdsM } = reservoir
      if (isAbsent(water.rateMPerS) || atMost(appliedM, holdsM)) continue
      const longestS = longestRunS(holdsM, water.rateMPerS)
      const { watering } = water.longestSet
      const [applied, holds] = depthsTold(appliedM, holdsM, site.units)
      report({
        subject: station.zone,
        at: at(runWritten(watering, station, controller)),
        message:
          `${stationName(station)}: a watering of ${setRunText(watering, watering.cycles, controller, site.units)} puts on ${applied}; ` +
          `${holderText(station, reservoir)} ${holds}, which come in ${minutesText(longestS / 60)}. The rest drains away.`,
        fix: howToFit(water, watering, controller, stepOf(site, controller), longestS),
        severity: reservoir.by === 'record' ? 'warning' : 'note',
        values: {
          applied_mm: appliedM * 1000,
          holds_mm: holdsM * 1000,
          set_min: watering.seconds / 60,
          longest_min: longestS / 60
        }
      })
    }
  }
}

function depthsTold(appliedM: number, holdsM: number, system: UnitSystem): readonly string[] {
  const unit = unitFor('depth', system)
  const [applied, holds] = [appliedM, holdsM].map(m => fromSi(m, unit, 'length')) as [number, number]
  return toldApart(applied, holds, system === 'us' ? 2 : 1).map(text => `${text}\u00a0${unit}`)
}

function holderText({ soil }: Station, { by }: ReservoirPlan): string {
  return by === 'record'
    ? 'the root zone takes up'
    : `typical ${soil?.texture ?? 'soil'} of the root depth takes up at most`
}

/** The most to set, and how many such waterings the month takes where the need is known. */
function howToFit(
  { months }: WaterPlan,
  { cycles, month }: SetRun,
  controller: Controller,
  stepS: number,
  longestS: number
): string {
  const cycleS = mostSet(longestS / cycles, stepS)
  if (cycleS === 0)
    return `${controller.id} cannot be set that short: use fewer cycles, or devices that give less water an hour.`
  const set = `${cycles === 1 ? '' : `${cycles} × `}${minutesText(cycleS / 60)}`
  const { needS, events = 0 } = months[month - 1] ?? {}
  if (needS === undefined || isAbsent(needS))
    return `Set ${set} at the most, and water on more days where the plants need more.`
  const times = wholeUp((needS * events) / (cycleS * cycles), 1)
  const now = Math.round(events)
  if (times <= events) return `Set ${set} at the most; by the need of the plants that is enough in ${monthName(month)}.`
  return `Set ${set} at the most. In ${monthName(month)} the plants need ${times} such waterings, where the program gives ${now}: add days.`
}
