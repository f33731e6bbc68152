import { isAbsent } from '../../base/absent.ts'
import { plausibleRate, isPlausible } from '../../reference/plausible.ts'
import type { Recorded, Site, Station } from '../../model/site.ts'
import type { Plan, WaterPlan } from '../../plan/plan.ts'
import { stationsInService } from '../wire/subject.ts'
import { runWritten } from './set-run.ts'

/**
 * Within half and twice of the need nothing is said: the plant factors of one class of water use lie as far apart (0.1 to 0.3), and so do a
 * cool and a hot summer and the efficiencies of drip and spray together. Rule of the project.
 */
export const LEAST_SHARE = 0.5
export const MOST_SHARE = 2

export interface SetAgainstNeed {
  readonly station: Station
  readonly written: Recorded
  /** 1 to 12: the month in which a watering must give most. */
  readonly month: number
  /** On a watering day. */
  readonly setS: number
  readonly needS: number
}

/**
 * What is set for the month of the greatest need, against that need. Bubblers are left out, since the basin that they fill is not the ground
 * that the tree uses, and so are rates that point to a slip of a unit, which has a finding of its own.
 */
export function setAgainstNeed(site: Site, plan: Plan): readonly SetAgainstNeed[] {
  return stationsInService(site).flatMap(station => {
    const water = plan.water.get(station.id)
    const peak = water && peakOf(water)
    if (!peak || !water.longestSet || fillsBasins(station) || isSlip(station, water)) return []
    const controller = site.controllers.find(one => one.id === station.controller)
    return [{ station, written: runWritten(water.longestSet.watering, station, controller), ...peak }]
  })
}

function peakOf({ months }: WaterPlan): Pick<SetAgainstNeed, 'month' | 'setS' | 'needS'> | undefined {
  let peak: Pick<SetAgainstNeed, 'month' | 'setS' | 'needS'> | undefined
  for (const [index, { setS, needS }] of months.entries())
    if (!isAbsent(needS) && needS > 0 && needS > (peak?.needS ?? 0)) peak = { month: index + 1, setS, needS }
  return peak
}

const fillsBasins = ({ devices }: Station): boolean => /bubbler|flood/iu.test(devices?.kind ?? '')

function isSlip({ devices }: Station, { rateMPerS }: WaterPlan): boolean {
  return isAbsent(rateMPerS) || !isPlausible(rateMPerS, plausibleRate(devices?.kind ?? ''))
}
