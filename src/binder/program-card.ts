import type { ProgramCardBlock } from './blocks.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'
import { daysText, runTimeText } from './days.ts'
import { showClock } from '../units/clock.ts'
import { roundedText } from '../units/show.ts'
import type { Words } from '../words/words.ts'
import type { Controller, Program } from '../model/site.ts'

/** The settings of each program in the order in which a person keys them in. `ids` are the controllers it stands for. */
export function programCards(
  controller: Controller,
  context: PageContext,
  ids: readonly string[] = [controller.id]
): ProgramCardBlock[] {
  return controller.programs.map(program => card(controller, program, context, ids))
}

function card(
  controller: Controller,
  program: Program,
  { site, plan, words }: PageContext,
  ids: readonly string[]
): ProgramCardBlock {
  const w = words.binder.controllers
  const lines = [
    { label: w.days, value: daysText(program.days, words) },
    { label: w.starts, value: program.starts.map(start => showClock(start, site.units)).join(', ') },
    { label: w.percent, value: percentText(program.monthlyPercent, words) }
  ]
  if (program.from ?? program.to) {
    lines.push({
      label: w.fromTo,
      value: [program.from && w.from(program.from), program.to && w.to(program.to)].filter(Boolean).join(' ')
    })
  }
  const pass = plan.passes.get(controller.id)?.find(one => one.program === program.id)
  const ends = program.starts.map(start => showClock(start + (pass?.lengthMinutes ?? 0), site.units))
  lines.push({ label: w.ends, value: ends.join(', ') })
  return {
    kind: 'program-card',
    title: w.programTitle(rangeOf(ids), program.id, program.name ?? ''),
    lines,
    stations: program.stations.map(entry => {
      const station = site.stations.find(one => one.controller === controller.id && one.number === entry.number)
      return {
        station: String(entry.number),
        waters: ids.length > 1 ? '–' : station ? [station.zone, station.waters].filter(Boolean).join(' · ') : '–',
        runTime: runTimeText(entry.runTime, words)
      }
    })
  }
}

/** "Jan 0 · Feb 0 · … %", or "100 %" all year. A month stays with its figure and the point after it. */
export function percentText(percents: Program['monthlyPercent'], { time }: Words): string {
  if (!percents) return '100 %'
  return (
    time.months
      .map((month, index) => `${month}\u00a0${roundedText((percents[index] ?? 1) * 100, 0)}`)
      .join('\u00a0· ') + '\u00a0%'
  )
}
