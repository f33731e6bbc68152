import { isAbsent } from '../base/absent.ts'
import { writeDayRule } from '../domain/schedule/text.ts'
import { adviseCard } from '../domain/water/advise-card.ts'
import type { Controller, Site } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'
import type { ZoneNeed } from './advice-need.ts'
import type { AdvisedProgram } from './advice-plan.ts'
import type { AllowedTimes } from './advice-rules.ts'
import { daysByRule } from '../domain/schedule/days-in-month.ts'
import type { Working } from './plan.ts'

export interface AdviceWorkingsOf {
  readonly site: Site
  readonly controller: Controller
  readonly programs: readonly AdvisedProgram[]
  readonly needs: ReadonlyMap<number, ZoneNeed>
  readonly times: AllowedTimes
  readonly stepS: number
}

/** How each advised run time came about, for the month in which a watering must give most. */
export function adviceWorkings(of: AdviceWorkingsOf): Working[] {
  return of.programs
    .filter(program => program.isChanged)
    .flatMap(program => program.stations.flatMap(({ number }) => workingOf(of, program, of.needs.get(number))))
}

function workingOf(of: AdviceWorkingsOf, program: AdvisedProgram, need: ZoneNeed | undefined): Working[] {
  if (!need) return []
  const { station, needM, applyM, rateMPerS, longestCycle, soakS, holds } = need
  const active = of.times.active(program)
  const perWatering = applyM.map((depth, index) => {
    const waterings = daysByRule(program.days, active[index] ?? [])
    return waterings > 0 ? depth / waterings : 0
  })
  const index = perWatering.indexOf(Math.max(...perWatering))
  const { sheet } = of.controller
  const result = adviseCard.run({
    need: needM[index],
    days: active[index]?.length,
    rate: rateMPerS,
    rule: writeDayRule(program.days),
    ...need.losses,
    starts: program.starts.length,
    holds: holds?.sureM,
    'longest-cycle': longestCycle === 'no limit' ? undefined : longestCycle,
    soak: soakS,
    least: sheet?.runTimeLeast?.si,
    most: sheet?.runTimeMost?.si,
    step: of.stepS,
    units: of.site.units
  })
  const subject = `${station.id} program ${program.id}, ${MONTHS[index]}`
  return isAbsent(result) ? [] : [{ calculation: adviseCard.name, subject, steps: result.steps }]
}
