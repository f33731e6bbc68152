import type { Block, ProgramCardBlock, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { daysText, runTimeText } from '../days.ts'
import { givenFigures, givenTable } from '../given.ts'
import { percentText, programCards } from '../program-card.ts'
import { rangeOf } from '../range.ts'
import { computed, stated } from '../values.ts'
import { groupBy } from '../../base/collections.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import type { Controller } from '../../model/site.ts'
import type { AdvicePlan, AdvisedProgram, UnmetPlan } from '../../plan/advice-plan.ts'
import { showClock } from '../../units/clock.ts'
import { roundedText, show } from '../../units/show.ts'
import type { ShowAs } from '../../units/show.ts'

/** For each controller what would meet the need, as it is keyed in, or what stands in the way; then what is needed and given. */
export function adviceSection(context: PageContext): Section {
  const { words } = context
  const w = words.advice
  const groups = adviceGroups(context)
  const given = givenFigures(context)
  const blocks: Block[] = [
    { kind: 'paragraph', text: w.lead },
    ...groups.flatMap(group => groupBlocks(group, context)),
    ...(given.length === 0
      ? []
      : [
          { kind: 'heading' as const, id: 'needed-and-given', text: w.given },
          ...given,
          { kind: 'paragraph' as const, text: w.givenLead, small: true },
          ...givenTable(context)
        ])
  ]
  return {
    id: 'advice',
    title: w.title,
    newPage: true,
    notSupplied: groups.length === 0,
    blocks: groups.length === 0 ? [{ kind: 'not-supplied', text: words.binder.notSupplied }] : blocks
  }
}

/** Controllers of which the same is said. */
interface Group {
  readonly controllers: readonly Controller[]
  readonly advice: AdvicePlan
  /** Of all of them; they differ in ids only. */
  readonly all: readonly AdvicePlan[]
}

function adviceGroups({ site, plan }: PageContext): readonly Group[] {
  const each = site.controllers.flatMap(controller => {
    const advice = plan.advice.get(controller.id)
    return advice ? [{ controller, advice }] : []
  })
  return [...groupBy(each, sameKey).values()].flatMap(alike => {
    const [first] = alike
    return first
      ? [
          {
            controllers: alike.map(one => one.controller),
            advice: first.advice,
            all: alike.map(one => one.advice)
          }
        ]
      : []
  })
}

/** Of which the same is said, but for the ids of stations; where there is something to key in, also what is set must be the same. */
function sameKey({ controller, advice }: { readonly controller: Controller; readonly advice: AdvicePlan }): string {
  const set = controller.programs.map(({ days, starts, stations, monthlyPercent }) => [
    writeDayRule(days),
    starts,
    stations.map(({ number, runTime }) => [number, runTime]),
    monthlyPercent
  ])
  const { verdict, programs, unmet, notJudged } = advice
  const said = [verdict, programs, unmet.map(one => ({ ...one, subject: '' })), notJudged.map(one => one.reason)]
  return JSON.stringify(verdict === 'change' ? [set, said] : said)
}

function groupBlocks({ controllers, advice, all }: Group, context: PageContext): Block[] {
  const w = context.words.advice
  const names = rangeOf(controllers.map(one => one.id))
  switch (advice.verdict) {
    case 'as-set':
      return [{ kind: 'paragraph', text: w.asSetMeets(names) }, ...left(all, context)]
    case 'not-known':
      return [{ kind: 'paragraph', text: w.notKnown(names) }, ...left(all, context)]
    case 'cannot':
      return [
        {
          kind: 'list',
          lead: w.cannot(names),
          ordered: false,
          items: [...new Set(all.flatMap(one => one.unmet.map(unmet => unmetText(unmet, context))))]
        },
        ...left(all, context)
      ]
    case 'change':
      return [...changeBlocks(controllers, advice, names, context), ...left(all, context)]
  }
}

function changeBlocks(
  controllers: readonly Controller[],
  advice: AdvicePlan,
  names: string,
  context: PageContext
): Block[] {
  const w = context.words.advice
  const [controller] = controllers
  if (!controller) return []
  const ids = controllers.map(one => one.id)
  const asSet = programCards(controller, context, ids)
  const pairs = advice.programs.flatMap<Block>(program => {
    const index = controller.programs.findIndex(one => one.id === program.id)
    const card = asSet[index]
    if (!program.isChanged || !card) return []
    const title = w.program(names, program.id)
    const advised = advisedCard(controller, program, context, ids)
    return [
      {
        kind: 'card-pair',
        left: { ...card, title: w.asSet(title) },
        right: { ...advised, title: w.wouldMeet(title) }
      },
      ...byMonth(program, title, context)
    ]
  })
  const kept = advice.programs.filter(one => !one.isChanged).map(one => one.id)
  return [
    { kind: 'heading', id: `advice-${controller.id}`, text: w.heading(names) },
    ...pairs,
    ...(kept.length === 0 ? [] : [{ kind: 'paragraph' as const, text: w.stays(kept.join(', ')) }])
  ]
}

/** Zones of which nothing is advised, those left for the same reason together. */
function left(all: readonly AdvicePlan[], { words }: PageContext): Block[] {
  const byReason = groupBy(
    all.flatMap(one => one.notJudged),
    one => one.reason
  )
  return [...byReason].map(([reason, zones]) => ({
    kind: 'paragraph',
    small: true,
    text: words.advice.notJudged(rangeOf(zones.map(one => one.station)), reason)
  }))
}

function advisedCard(
  controller: Controller,
  program: AdvisedProgram,
  { site, words }: PageContext,
  ids: readonly string[]
): ProgramCardBlock {
  const w = words.binder.controllers
  const clock = (minute: number) => showClock(minute, site.units)
  const lines = [
    { label: w.days, value: daysText(program.days, words) },
    { label: w.starts, value: program.starts.map(clock).join(', ') },
    {
      label: w.percent,
      value: program.byMonthS ? words.advice.noPercent : percentText(program.monthlyPercent, words)
    }
  ]
  if (program.from ?? program.to)
    lines.push({
      label: w.fromTo,
      value: [program.from && w.from(program.from), program.to && w.to(program.to)].filter(Boolean).join(' ')
    })
  lines.push({ label: w.ends, value: program.ends.map(clock).join(', ') })
  return {
    kind: 'program-card',
    title: program.id,
    lines,
    stations: program.stations.map(({ number, runTime }) => {
      const station = site.stations.find(one => one.controller === controller.id && one.number === number)
      return {
        station: String(number),
        waters: ids.length > 1 ? '–' : station ? [station.zone, station.waters].filter(Boolean).join(' · ') : '–',
        runTime: runTimeText(runTime, words)
      }
    })
  }
}

/** For a controller that has no monthly percent. */
function byMonth({ stations, byMonthS }: AdvisedProgram, title: string, { words }: PageContext): Block[] {
  if (!byMonthS) return []
  const w = words.advice
  return [
    {
      kind: 'table',
      caption: w.byMonth(title),
      columns: [{ label: w.station }, ...words.time.months.map(label => ({ label, align: 'right' as const }))],
      rows: stations.map(({ number }, index) => [
        stated(String(number), true),
        ...(byMonthS[index] ?? []).map(s => computed(s === 0 ? '–' : roundedText(s / 60, 1), 'program-advice'))
      ])
    }
  ]
}

function unmetText(unmet: UnmetPlan, { site, words }: PageContext): string {
  const w = words.advice
  if (unmet.kind === 'days') return unmet.first ? w.days(unmet.rule, unmet.first) : w.noDays(unmet.rule)
  const { subject, needed, allowed } = unmet
  const month = words.boxPage.months[(unmet.month ?? 1) - 1] ?? ''
  const told = (as: ShowAs) => [needed, allowed, needed - allowed].map(one => show(one, as, site.units)) as Three
  switch (unmet.kind) {
    case 'hours':
      return unmet.onEnd ? w.hours(...told('minutes')) : w.hoursDay(...told('minutes'))
    case 'supply':
      return w.supply(...told('minutes'))
    case 'reservoir':
      return w.reservoir(subject, month, ...told('depth'))
    case 'interval':
      return w.interval(subject, month, needed, allowed)
    case 'intake':
      return w.intake(subject, ...told('minutes'))
    case 'daily-cap':
      return w.cap(subject, month, ...told('minutes'))
    case 'cycle-starts':
      return w.cycleStarts(subject, needed, allowed)
    case 'starts-a-day':
      return w.startsADay(needed, allowed)
    case 'programs':
      return w.programs(needed, allowed)
  }
}

type Three = [needed: string, allowed: string, over: string]
