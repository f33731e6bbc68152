import type { ScriptController } from '../binder/pages.ts'
import { isInDates, isInSeason } from '../domain/schedule/active.ts'
import { percentIn } from '../domain/schedule/controller.ts'
import { runsOn } from '../domain/schedule/days.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import { sequenceProgram } from '../domain/schedule/sequence.ts'
import { isSuspended } from '../domain/schedule/suspended.ts'
import { fromEpochDay, monthOf } from '../units/date.ts'
import type { EpochDay, MonthDay } from '../units/date.ts'

type Program = ScriptController['programs'][number]

/** One opening of a valve on a day; seconds count from that day's midnight, and `toS` may pass 86,400. */
export interface Opening {
  readonly program: string
  readonly station: number
  readonly waters: string
  readonly fromS: number
  readonly toS: number
}

/** What opens on a day, in order. A program that started the evening before is there with what it opens after midnight. */
export function openingsOn(controller: ScriptController, day: EpochDay): Opening[] {
  if (controller.outOfService !== undefined) return []
  const evening = openingsStarted(controller, day - 1).map(opening => later(opening, -DAY_S))
  return [...evening, ...openingsStarted(controller, day)]
    .filter(({ fromS }) => fromS >= 0 && fromS < DAY_S)
    .sort((a, b) => a.fromS - b.fromS)
}

/** The first opening of each station at a time of a day or later, within a year and a day, by station. */
export function nextStarts(
  controller: ScriptController,
  day: EpochDay,
  fromS: number
): { readonly day: EpochDay; readonly first: Opening }[] {
  const open = new Set(controller.programs.flatMap(program => program.stations.map(one => one.number)))
  const found: { day: EpochDay; first: Opening }[] = []
  for (let next = day; next <= day + 366 && open.size > 0; next += 1)
    for (const first of openingsOn(controller, next))
      if ((next > day || first.fromS >= fromS) && open.delete(first.station)) found.push({ day: next, first })
  return found.sort((a, b) => a.first.station - b.first.station)
}

function openingsStarted(controller: ScriptController, day: EpochDay): Opening[] {
  const iso = fromEpochDay(day)
  const yearDay = { day, iso, monthDay: iso.slice(5) as MonthDay, month: monthOf(iso) }
  if (!isInSeason(yearDay, controller.season)) return []
  return controller.programs
    .filter(
      program => isInDates(yearDay, program) && runsOn(program.days, day) && !isSuspended(yearDay, program.suspensions)
    )
    .flatMap(program => openingsOf(controller, program, yearDay.month))
}

function openingsOf(controller: ScriptController, program: Program, month: number): Opening[] {
  const settings = {
    percent: percentIn(program, month),
    stepS: controller.stepS,
    delayS: controller.delayBetweenStationsS
  }
  const sequence = sequenceProgram(program.stations, settings)
  const waters = new Map(program.stations.map(station => [station.number, station.waters]))
  return program.starts.flatMap(start =>
    sequence.map(({ station, startS, durationS }) => {
      const fromS = start * 60 + startS
      return { program: program.id, station, waters: waters.get(station) ?? '', fromS, toS: fromS + durationS }
    })
  )
}

function later(opening: Opening, seconds: number): Opening {
  return { ...opening, fromS: opening.fromS + seconds, toS: opening.toS + seconds }
}
