import { showStated } from '../../units/show.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import type { Quantity } from '../../units/quantity.ts'
import type { ProductSheet, ProgramStation } from '../../model/site.ts'
import { at } from '../at.ts'

export const runTimeOutOfRange: SiteCheck = {
  card: {
    code: 'controller/run-time-out-of-range',
    severity: 'error',
    looksAt:
      'A run time that the controller cannot be set to: shorter or longer than it allows, or between two of its steps.',
    why: 'Whoever keys it in has to round, and nobody knows which way.',
    sources: ['product-sheet'],
    fix: 'Use a run time that the controller can be set to.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 30 s } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 1 min } }] }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of site.controllers) {
      const { sheet } = controller
      if (!sheet) continue
      for (const program of controller.programs) {
        for (const station of program.stations) {
          const trouble = outOfRange(station, sheet)
          if (!trouble) continue
          report({
            subject: controller.id,
            at: at(station),
            message: `${controller.id}, program ${program.id}, station ${station.number}: ${minutes(station.runTime.cycleS)} is ${trouble.text}.`,
            fix: `Use ${trouble.instead}.`,
            values: { run_time_min: station.runTime.cycleS / 60, limit_min: trouble.limit.si / 60 }
          })
        }
      }
    }
  }
}

function outOfRange(
  { runTime }: ProgramStation,
  sheet: ProductSheet
): { text: string; instead: string; limit: Quantity } | undefined {
  const { runTimeLeast: least, runTimeMost: most, runTimeStep: step } = sheet
  if (least && runTime.cycleS < least.si)
    return {
      text: `below the shortest run time, ${showStated(least)}`,
      instead: `${showStated(least)} or more`,
      limit: least
    }
  if (most && runTime.cycleS > most.si)
    return {
      text: `above the longest run time, ${showStated(most)}`,
      instead: `cycles of ${showStated(most)} or less`,
      limit: most
    }
  if (step && runTime.cycleS % step.si !== 0) {
    const below = Math.floor(runTime.cycleS / step.si) * step.si
    return {
      text: `between two steps of ${showStated(step)}`,
      instead: `${minutes(below)} or ${minutes(below + step.si)}`,
      limit: step
    }
  }
  return undefined
}

const minutes = (seconds: number): string =>
  seconds % 60 === 0 || seconds > 600 ? `${roundedText(seconds / 60, 1)} min` : `${seconds} s`
