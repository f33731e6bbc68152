import { isPresent } from '../base/absent.ts'
import { showClock } from '../units/clock.ts'
import { roundedText } from '../units/show.ts'
import type { Box, Controller, Program, Station } from '../model/site.ts'
import type { PublicContext } from './context.ts'
import { daysText, runTimeText } from './days.ts'
import { stationsAt } from './holds.ts'
import { stopWords } from './shut-off.ts'

/** A line of the zone plan as plain text, and what it tells: the shorter a plan has to be, the more kinds of lines give way. */
interface PlanLine {
  readonly kind: 'first' | 'program' | 'station' | 'percent' | 'last'
  readonly text: string
  /** Of a station: without what it waters. */
  readonly short?: string
}

/**
 * The zone plan of a box for a phone without a network, line by line: name, shut-off, programs with their starts, stations with what they water
 * and for how long, the percent of each month, the battery change. Where it is too long for its code, first the stations lose what they water, then
 * the percents give way, then the last stations, then programs; no line is cut, and it says that there is more on the page. Undefined where
 * even name, shut-off and battery do not fit. From the public site alone, so that nothing private can stand in it.
 */
export function planText(
  box: Box & { readonly tag: string },
  context: PublicContext,
  fits: (text: string) => boolean
): readonly string[] | undefined {
  const lines = planLines(box, context)
  const { more } = context.words.label.plan
  const whole = lines.map(one => one.text)
  if (fits(whole.join('\n'))) return whole
  for (const shorter of shortened(lines)) {
    const texts = [...shorter.map(one => one.text), more]
    if (fits(texts.join('\n'))) return texts
  }
  return undefined
}

/** Ever shorter plans. */
function* shortened(lines: readonly PlanLine[]): Generator<readonly PlanLine[]> {
  let rest = lines.map(one => ({ ...one, text: one.short ?? one.text }))
  yield rest
  for (const kind of ['percent', 'station', 'program'] as const) {
    for (
      let at = rest.findLastIndex(one => one.kind === kind);
      at >= 0;
      at = rest.findLastIndex(one => one.kind === kind)
    ) {
      rest = rest.filter((_, index) => index !== at)
      yield rest
    }
  }
}

function planLines(box: Box & { readonly tag: string }, context: PublicContext): PlanLine[] {
  const { site, plan, words } = context
  const w = words.label.plan
  const stations = stationsAt(site, box)
  const here = new Set([
    ...site.controllers.filter(one => one.box === box.id).map(one => one.id),
    ...stations.map(one => one.controller)
  ])
  const controllers = site.controllers.filter(one => here.has(one.id))
  const batteries = controllers.flatMap<PlanLine>(({ id }) => {
    const due = plan.batteries.get(id)
    if (!due || due.state === 'none') return []
    return [{ kind: 'last', text: w.battery(id, isPresent(due.dueOn) ? due.dueOn : w.noDate) }]
  })
  return [
    { kind: 'first' as const, text: w.head(site.title, box.id, box.tag) },
    { kind: 'first' as const, text: `${words.pages.label.shutOff}: ${stopWords(site, words)}` },
    ...controllers.flatMap(controller => controllerLines(controller, stations, context)),
    ...batteries,
    { kind: 'last' as const, text: w.asOf(plan.on) }
  ].map(plainSpaces)
}

function controllerLines(controller: Controller, stations: readonly Station[], context: PublicContext): PlanLine[] {
  const own = stations.filter(one => one.controller === controller.id)
  const running = controller.programs.filter(one =>
    one.stations.some(run => own.some(({ number }) => number === run.number))
  )
  const months = running.map(one => monthsText(one.monthlyPercent, context.words.time.months))
  // Programs of one percent tell it once, after the last of them.
  const alike = months.every(one => one === months[0])
  const programs = running.flatMap((program, index) => [
    ...programLines(controller, program, own, context),
    ...percentLine(alike && index < running.length - 1 ? '' : (months[index] ?? ''), context)
  ])
  const idle = own.filter(
    one => !controller.programs.some(({ stations: of }) => of.some(run => run.number === one.number))
  )
  const w = context.words.label.plan
  return [...programs, ...idle.map(one => stationLine(one, one.id, w.noProgram))]
}

function programLines(
  controller: Controller,
  program: Program,
  own: readonly Station[],
  { site, words }: PublicContext
): PlanLine[] {
  const w = words.label.plan
  const runs = program.stations.flatMap(run => {
    const station = own.find(one => one.number === run.number)
    return station ? [stationLine(station, String(run.number), runTimeText(run.runTime, words))] : []
  })
  const starts = program.starts.map(start => showClock(start, site.units)).join(', ')
  return [
    { kind: 'program', text: w.program(controller.id, program.id, daysText(program.days, words), starts) },
    ...runs
  ]
}

function percentLine(months: string, { words }: PublicContext): PlanLine[] {
  return months === '' ? [] : [{ kind: 'percent', text: words.label.plan.percent(months) }]
}

function stationLine({ id, zone, waters }: Station, name: string, runTime: string): PlanLine {
  const named = [name, zone === id ? '' : zone].filter(Boolean).join(' ')
  return {
    kind: 'station',
    text: `${[named, waters].filter(Boolean).join(' ')}: ${runTime}`,
    short: `${named}: ${runTime}`
  }
}

/** "Apr 50, May-Jun 75": months alike are joined, those without water left out; empty where all have the whole of it. */
function monthsText(percents: Program['monthlyPercent'], months: readonly string[]): string {
  if (!percents || percents.every(one => one === 1)) return ''
  const spans: { from: number; to: number; percent: number }[] = []
  for (const [month, percent] of percents.entries()) {
    const last = spans.at(-1)
    if (last?.percent === percent && last.to === month - 1) last.to = month
    else spans.push({ from: month, to: month, percent })
  }
  return spans
    .filter(one => one.percent > 0)
    .map(({ from, to, percent }) => {
      const named = from === to ? months[from] : `${months[from]}-${months[to]}`
      return `${named} ${roundedText(percent * 100, 0)}`
    })
    .join(', ')
}

/** Thin and fixed spaces are plain ones in a code: no reader then has to guess. */
function plainSpaces(line: PlanLine): PlanLine {
  const plain = (text: string): string => text.replace(/\s+/gu, ' ').trim()
  return { ...line, text: plain(line.text), ...(line.short === undefined ? {} : { short: plain(line.short) }) }
}
