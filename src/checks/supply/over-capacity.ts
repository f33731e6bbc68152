import { isPresent } from '../../base/absent.ts'
import { meterLimitM3s } from '../../domain/supply/meter-limit.ts'
import { groupsWithin } from '../../domain/supply/peak-flow.ts'
import { atMost } from '../../domain/within.ts'
import type { Site, Supply } from '../../model/site.ts'
import type { PeakPlan } from '../../plan/plan.ts'
import { stationFlowM3s } from '../../plan/station-flow.ts'
import { showClock } from '../../units/clock.ts'
import { fromSi } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'

/** More names than this are told as a number. */
const NAMES_TOLD = 6

export const overCapacity: SiteCheck = {
  card: {
    code: 'supply/over-capacity',
    severity: 'error',
    looksAt:
      'What all stations that are open at one time draw from a supply, over the whole year, against its limit, and against 75 % of what its meter bears.',
    why: 'Above its limit the pressure falls everywhere: sprays do not reach, drip starves, and a valve may fail to close.',
    sources: ['site-record', 'meter-rules', 'project-rule'],
    fix: 'Move start times apart, so that what runs together stays within the limit.',
    worked: {
      example: `supplies: [{ id: S1, kind: potable, limit: 20 gpm }]
controllers:
  - { id: K1, box: VB1, programs: [{ id: A, days: every day, starts: ["22:00"], stations: { 1: 50 min } }] }
  - { id: K2, box: VB2, programs: [{ id: A, days: every day, starts: ["22:30"], stations: { 1: 45 min } }] }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, normal-flow: 12 gpm } }
  - { id: K2/1, zone: Z2, valve: { box: VB2, normal-flow: 9 gpm } }`,
      instead: `supplies: [{ id: S1, kind: potable, limit: 20 gpm }]
controllers:
  - { id: K1, box: VB1, programs: [{ id: A, days: every day, starts: ["22:00"], stations: { 1: 50 min } }] }
  - { id: K2, box: VB2, programs: [{ id: A, days: every day, starts: ["22:50"], stations: { 1: 45 min } }] }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, normal-flow: 12 gpm } }
  - { id: K2/1, zone: Z2, valve: { box: VB2, normal-flow: 9 gpm } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const supply of site.supplies) {
      const { limit } = supply
      const peak = plan.peaks.get(supply.id)
      if (!peak) continue
      if (!limit || atMost(peak.flowM3s, limit.si)) {
        judgeMeter(supply, peak, site, report)
        continue
      }
      const unit = site.units === 'us' ? 'gpm' : 'L/min'
      const key = site.units === 'us' ? 'gpm' : 'l_per_min'
      const [flow, most] = [peak.flowM3s, limit.si].map(si => fromSi(si, unit, 'flow')) as [number, number]
      const [flowText, mostText] = toldApart(flow, most, 1)
      const stated = limit.unit === unit ? showStated(limit) : `${showStated(limit)} (${mostText}\u00a0${unit})`
      const clock = (minute: number) => showClock(minute, site.units)
      const legal = clockIsOff(peak, site) ? ' by the legal clock' : ''
      const [runs, draws] = peak.stations.length === 1 ? ['runs', 'draws'] : ['run together', 'draw']
      report({
        subject: supply.id,
        at: at(supply, 'limit'),
        message:
          `${supply.id}: ${namesText(peak, site)} ${runs} from ${clock(peak.fromMinute)} to ${clock(peak.toMinute)}${legal} and ${draws} ${flowText}\u00a0${unit}; ` +
          `the limit is ${stated}. It is passed on ${peak.daysOver} ${peak.daysOver === 1 ? 'day' : 'days'} of the year, first on ${peak.firstOver}.${notStated(peak)}`,
        fix: howToFit(peak, site, limit.si),
        values: {
          [`peak_${key}`]: flow,
          [`limit_${key}`]: most,
          from: showClock(peak.fromMinute, 'metric'),
          to: showClock(peak.toMinute, 'metric'),
          stations: peak.stations.length,
          days: peak.daysOver,
          first_on: peak.firstOver ?? peak.on
        }
      })
    }
  }
}

/** The limit holds, or none is stated: then three quarters of what the meter bears. */
function judgeMeter(supply: Supply, peak: PeakPlan, site: Site, report: Report): void {
  const safe = supply.meterSafeFlow
  if (!safe || atMost(peak.flowM3s, meterLimitM3s(safe.si))) return
  const [unit, key] = site.units === 'us' ? (['gpm', 'gpm'] as const) : (['L/min', 'l_per_min'] as const)
  const [flow, most] = [peak.flowM3s, meterLimitM3s(safe.si)].map(si => fromSi(si, unit, 'flow')) as [number, number]
  const [flowText, mostText] = toldApart(flow, most, 1)
  const draws = peak.stations.length === 1 ? 'draws' : 'draw'
  report({
    subject: supply.id,
    at: at(supply, 'meter-safe-flow'),
    severity: 'warning',
    message: `${supply.id}: ${namesText(peak, site)} ${draws} ${flowText}\u00a0${unit} through a meter for ${showStated(safe)}; 75 % of that, ${mostText}\u00a0${unit}, is the most to draw for long.`,
    why: 'A meter that runs near its maximum wears fast and takes much of the pressure.',
    fix: howToFit(peak, site, meterLimitM3s(safe.si)),
    sources: ['meter-rules'],
    values: { [`peak_${key}`]: flow, [`limit_${key}`]: most, stations: peak.stations.length }
  })
}

interface Part {
  readonly zone: string
  readonly controller: string
  readonly flowM3s: number
}

function partsOf({ stations }: PeakPlan, site: Site): readonly Part[] {
  return stations.flatMap(id => {
    const station = site.stations.find(one => one.id === id)
    const flow = station && stationFlowM3s(station)
    return station && flow !== undefined && isPresent(flow)
      ? [{ zone: station.zone, controller: station.controller, flowM3s: flow }]
      : []
  })
}

/** True where a controller that runs then keeps another time than the legal one for part of the year. */
function clockIsOff(peak: PeakPlan, site: Site): boolean {
  const running = new Set(partsOf(peak, site).map(one => one.controller))
  return site.controllers.some(one => running.has(one.id) && one.clock?.daylightSaving === 'not followed')
}

function namesText(peak: PeakPlan, site: Site): string {
  return peak.stations.length > NAMES_TOLD ? `${peak.stations.length} stations` : listed(partsOf(peak, site))
}

const listed = (parts: readonly Part[]): string => {
  const names = parts.map(one => one.zone)
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}

function howToFit(peak: PeakPlan, site: Site, limitM3s: number): string {
  const parts = partsOf(peak, site)
  const groups = groupsWithin(parts, limitM3s)
  if (!groups) {
    const alone = parts.filter(one => !atMost(one.flowM3s, limitM3s))
    return `${listed(alone)} alone ${alone.length === 1 ? 'draws' : 'each draw'} more than the limit: split the zone, or see whether flow and limit are right.`
  }
  const few = parts.length <= NAMES_TOLD
  const each = groups.map(group => (few ? listed(group) : String(group.length))).join(few ? '; then ' : ' and ')
  const drift =
    new Set(parts.map(one => one.controller)).size > 1 ? ' Separate clocks drift, so leave some minutes between.' : ''
  return `Run them one after another in ${groups.length} groups${few ? ': ' : ' of '}${each}.${drift}`
}

function notStated({ flowNotStated }: PeakPlan): string {
  if (flowNotStated.length === 0) return ''
  const many = flowNotStated.length > NAMES_TOLD
  return ` The flow of ${many ? `${flowNotStated.length} more stations` : flowNotStated.join(', ')} is not stated and not in it.`
}
