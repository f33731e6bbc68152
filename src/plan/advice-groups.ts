import { isPresent } from '../base/absent.ts'
import { atMost } from '../domain/within.ts'
import { daysPerWeek } from '../domain/schedule/spacing.ts'
import type { ScheduledProgram, StationEntry } from '../domain/schedule/controller.ts'
import type { Controller } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { DailyCaps } from './advice-caps.ts'
import type { ZoneNeed } from './advice-need.ts'
import { stationFlowM3s } from './station-flow.ts'

/** Stations that share one program of the advice. */
export interface AdviceGroup {
  readonly id: string
  readonly name?: string
  readonly entries: readonly AdviceEntry[]
  /** The program as set, without stations that an earlier program has. */
  readonly asSet: ScheduledProgram
  /** The most that it draws at once, m³/s; what is not stated counts as nothing. */
  readonly flowM3s: number
  readonly from?: IsoDate
  readonly to?: IsoDate
}

/** A station with its need, or without where it is left as it is set. */
export interface AdviceEntry {
  readonly asSet: StationEntry
  readonly need?: ZoneNeed
  /** None where no rule caps it. */
  readonly capsS?: DailyCaps
}

/**
 * The programs as set, each station in the first that has it. Where there are more than the controller holds, those that water as often are
 * put together until it holds them; undefined where programs of different dates stand in the way.
 */
export function adviceGroups(
  controller: Controller,
  programs: readonly ScheduledProgram[],
  needs: ReadonlyMap<number, ZoneNeed>,
  caps: ReadonlyMap<number, DailyCaps>
): readonly AdviceGroup[] | undefined {
  const seen = new Set<number>()
  const groups: AdviceGroup[] = []
  for (const program of programs) {
    const stations = program.stations.filter(one => !seen.has(one.number))
    for (const { number } of stations) seen.add(number)
    if (stations.length > 0) groups.push(groupOf(controller, { ...program, stations }, needs, caps))
  }
  const most = controller.sheet?.programs ?? Infinity
  if (atMost(groups.length, most)) return groups
  if (groups.some(one => one.from !== undefined || one.to !== undefined)) return undefined
  return joined(groups, most)
}

function groupOf(
  controller: Controller,
  asSet: ScheduledProgram,
  needs: ReadonlyMap<number, ZoneNeed>,
  caps: ReadonlyMap<number, DailyCaps>
): AdviceGroup {
  const name = controller.programs.find(one => one.id === asSet.id)?.name
  const entries = asSet.stations.map<AdviceEntry>(one => {
    const [need, capsS] = [needs.get(one.number), caps.get(one.number)]
    return { asSet: one, ...(need ? { need } : {}), ...(capsS ? { capsS } : {}) }
  })
  const flows = entries.map(({ need }) => (need ? stationFlowM3s(need.station) : 0))
  return {
    id: asSet.id,
    entries,
    asSet,
    flowM3s: Math.max(0, ...flows.filter(isPresent)),
    ...(name === undefined ? {} : { name }),
    ...(asSet.from === undefined ? {} : { from: asSet.from }),
    ...(asSet.to === undefined ? {} : { to: asSet.to })
  }
}

/** Two by two, those nearest in waterings a week; the one that waters more often gives the days. */
function joined(groups: readonly AdviceGroup[], most: number): readonly AdviceGroup[] {
  let all = [...groups].sort((a, b) => daysPerWeek(b.asSet.days) - daysPerWeek(a.asSet.days))
  while (all.length > Math.max(1, most)) {
    const gaps = all.slice(1).map((one, index) => {
      const before = all[index]
      return before ? daysPerWeek(before.asSet.days) - daysPerWeek(one.asSet.days) : Infinity
    })
    const at = gaps.indexOf(Math.min(...gaps))
    const [first, second] = [all[at], all[at + 1]]
    if (!first || !second) return all
    all = [...all.slice(0, at), together(first, second), ...all.slice(at + 2)]
  }
  return all
}

function together(first: AdviceGroup, second: AdviceGroup): AdviceGroup {
  return {
    ...first,
    entries: [...first.entries, ...second.entries],
    asSet: { ...first.asSet, stations: [...first.asSet.stations, ...second.asSet.stations] },
    flowM3s: Math.max(first.flowM3s, second.flowM3s)
  }
}
