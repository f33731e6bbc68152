import { runsOn } from '../../domain/schedule/days.ts'
import type { DayRule } from '../../domain/schedule/program.ts'
import { DAY_S } from '../../domain/schedule/run-times.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import { daysOfRule } from '../../domain/schedule/rules.ts'
import type { OutsideDay } from '../../domain/schedule/windows.ts'
import { fromEpochDay } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { minutesText } from './hours.ts'
import { ruleFacts } from '../../plan/rule-facts.ts'
import { brokenRules, byWhom, daysKey } from './rules-over.ts'

export const crossesMidnight: SiteCheck = {
  card: {
    code: 'schedule/crosses-midnight',
    severity: 'warning',
    looksAt: 'A run that starts on an allowed day and goes on past midnight into a day that is not.',
    why: 'After midnight it is another date, and a rule of days counts the water that flows on it.',
    sources: ['site-record', 'project-rule'],
    fix: 'Start earlier, so that the run is over by midnight.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: even dates, starts: ["23:30"], stations: { 1: 35 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: even dates, starts: ["23:25"], stations: { 1: 35 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    const facts = ruleFacts(site)
    for (const { controller, rule, note, broken } of brokenRules(site, plan, 'days')) {
      const allowed = daysOfRule(rule, facts)
      if (!allowed) continue
      for (const { program: id, day, minutesOver, firstDay } of lateStarts(broken, allowed)) {
        const program = controller.programs.find(one => one.id === id)
        if (!program) continue
        report({
          subject: controller.id,
          at: at(program, 'starts'),
          message:
            `${controller.id}, program ${id}: it runs ${minutesText(minutesOver)} past midnight of ${fromEpochDay(day)}, ` +
            `into a date outside "${writeDayRule(allowed)}"${byWhom(site, rule)}.${note}`,
          fix: `Start at least ${Math.ceil(minutesOver - 1e-6)}\u00a0min earlier, or shorten the runs by as much in all.`,
          values: { minutes_over: minutesOver, first_on: fromEpochDay(firstDay) },
          related: [{ at: at(rule, daysKey(rule)), note: 'the days allowed' }]
        })
      }
    }
  }
}

interface LateStart {
  readonly program: string
  readonly day: number
  /** From midnight to the last closing. */
  readonly minutesOver: number
  /** Of all nights on which this program is late. */
  readonly firstDay: number
}

/** For each program the start on an allowed day that waters for longest into a day that is not, the earliest of those. */
function lateStarts(broken: readonly OutsideDay[], allowed: DayRule): readonly LateStart[] {
  const late = new Map<string, LateStart>()
  for (const { day, runs } of broken) {
    if (!runsOn(allowed, day)) continue
    for (const { run, toS } of runs) {
      const minutesOver = (toS - DAY_S) / 60
      const worst = late.get(run.program)
      if (!worst || minutesOver > worst.minutesOver)
        late.set(run.program, { program: run.program, day, minutesOver, firstDay: worst?.firstDay ?? day })
    }
  }
  return [...late.values()]
}
