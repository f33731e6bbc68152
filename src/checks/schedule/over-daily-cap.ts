import { isAbsent } from '../../base/absent.ts'
import { dailyOpenS } from '../../domain/schedule/daily-open.ts'
import { inForce } from '../../domain/schedule/rules.ts'
import { atMost } from '../../domain/within.ts'
import type { Controller, Site, WateringRule } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import { bindsStation, ruleFacts } from '../../plan/rule-facts.ts'
import { fromEpochDay } from '../../units/date.ts'
import { show, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { legalDays } from './legal-runs.ts'
import { byWhom } from './rules-over.ts'

export const overDailyCap: SiteCheck = {
  card: {
    code: 'schedule/over-daily-cap',
    severity: 'error',
    looksAt:
      'What a station gets in one day, all starts, cycles and programs together, against the most that a rule allows.',
    why: 'It breaks the rule of the place on each such day.',
    sources: ['site-record'],
    fix: 'Shorten the run, or leave out a start or a program of that day.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, at-most: 8 min }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 10 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, at-most: 8 min }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 8 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const rule of site.wateringRules) {
      if (!rule.atMost) continue
      for (const controller of site.controllers) {
        const over = overCap(site, plan, controller, rule)
        const worst = over[0]
        if (!worst) continue
        const others = over.length - 1
        const [given, limit] = amounts(worst, rule, site)
        const more = others === 0 ? '' : ` ${others} more ${others === 1 ? 'station is' : 'stations are'} over as well.`
        const { note } = legalDays(plan.schedules.get(controller.id))
        report({
          subject: controller.id,
          at: runWritten(controller, worst.station),
          message:
            `${controller.id}/${worst.station} gets ${given} on ${fromEpochDay(worst.day)}; ` +
            `the rule allows ${limit} a day${byWhom(site, rule)}.${more}${note}`,
          fix: `Give it ${show(worst.mostS, 'minutes', site.units)} a day or less, all starts and programs together, and water on more days where the plants need it.`,
          values: { given_min: worst.openS / 60, most_min: worst.mostS / 60, first_on: fromEpochDay(worst.firstDay) },
          related: [{ at: at(rule, 'at-most'), note: 'the most allowed in a day' }]
        })
      }
    }
  }
}

interface OverCap {
  readonly station: number
  readonly day: number
  readonly firstDay: number
  readonly openS: number
  readonly mostS: number
}

/** The stations of a controller that a day gives too much, the worst first, each on its worst day. */
function overCap(site: Site, plan: Plan, controller: Controller, rule: WateringRule): readonly OverCap[] {
  const isInForce = inForce(rule, ruleFacts(site))
  const binds = bindsStation(rule, site, controller.id)
  const worst = new Map<number, OverCap>()
  for (const [day, open] of dailyOpenS(legalDays(plan.schedules.get(controller.id)).days)) {
    if (!isInForce(day)) continue
    for (const [station, openS] of open) {
      const mostS = mostInDayS(plan, `${controller.id}/${station}`, rule)
      if (mostS === undefined || !binds(station) || atMost(openS, mostS)) continue
      const before = worst.get(station)
      if (!before || openS > before.openS)
        worst.set(station, { station, day, firstDay: before?.firstDay ?? day, openS, mostS })
    }
  }
  return [...worst.values()].sort((a, b) => b.openS / b.mostS - a.openS / a.mostS)
}

/** A cap of depth in time: undefined where the rate of the station is not known. */
function mostInDayS(plan: Plan, station: string, { atMost: cap }: WateringRule): number | undefined {
  if (cap?.dimension === 'duration') return cap.si
  const rate = plan.water.get(station)?.rateMPerS
  return cap === undefined || rate === undefined || isAbsent(rate) || rate <= 0 ? undefined : cap.si / rate
}

/** What is given and what is allowed, in the form of the rule. */
function amounts({ openS, mostS }: OverCap, { atMost: cap }: WateringRule, { units }: Site): [string, string] {
  const limit = cap ? showStated(cap) : ''
  const minutes = toldApart(openS / 60, mostS / 60, 1)
  if (cap?.dimension !== 'length') return [`${minutes[0]}\u00a0min`, limit]
  return [`${show((openS / mostS) * cap.si, 'depth', units)} (${minutes[0]}\u00a0min)`, limit]
}

function runWritten(controller: Controller, station: number) {
  const entries = controller.programs.flatMap(program => program.stations.filter(one => one.number === station))
  const longest = entries.reduce<(typeof entries)[number] | undefined>(
    (most, one) =>
      most && most.runTime.cycleS * most.runTime.cycles >= one.runTime.cycleS * one.runTime.cycles ? most : one,
    undefined
  )
  return longest ? at(longest) : at(controller, 'programs')
}
