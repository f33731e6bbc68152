import { isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { coilVoltStep } from '../domain/wire/coil-voltage.ts'
import { rungStep } from '../domain/wire/wire-choose.ts'
import type { Rung } from '../domain/wire/wire-choose.ts'
import { judgeAll, verdictStep } from '../domain/wire/wire-limit.ts'
import { ohmText } from '../domain/wire/words.ts'
import type { Working } from './plan.ts'
import type { StatedLimit } from './wire-facts.ts'
import { usableLimits } from './wire-run.ts'
import type { RunFacts } from './wire-run.ts'

/** The arithmetic of one run, in the order in which a person would do it. */
export function wireWorkings(
  run: RunFacts,
  stated: readonly StatedLimit[],
  climbed: Maybe<readonly Rung[]>
): Working[] {
  const { facts, loop, pulsedOhm: coilOhm, spliceOhm, unit } = run
  const subject = facts.id
  if (isAbsent(loop)) return [{ calculation: 'wire-loop', subject, steps: [`not computed: ${loop.reason}`] }]
  const workings: Working[] = [{ calculation: 'wire-loop', subject, steps: loop.steps }]
  const pulseVolt = facts.sheet?.pulseVolts?.si
  if (pulseVolt !== undefined && isPresent(coilOhm)) {
    const step = coilVoltStep({ pulseVolt, coilOhm, loopOhm: loop.value, sourceOhm: 0 })
    workings.push({ calculation: 'coil-voltage', subject, steps: [...parallelSteps(run), step] })
  }
  const atRun = { lengthM: run.lengthM, loopOhm: loop.value, spliceOhm }
  const judged = judgeAll(usableLimits(stated, run), atRun, run.make)
  if (isPresent(judged) && judged.length > 0)
    workings.push({
      calculation: 'wire-limit',
      subject,
      steps: judged.flatMap(one => [...one.steps, `${one.limit.form}: ${verdictStep(one, atRun, run.make, unit)}`])
    })
  // Where the size there is passes, its rung only repeats the verdict.
  if (isPresent(climbed) && climbed.length > 1)
    workings.push({ calculation: 'wire-choose', subject, steps: climbed.map(rung => rungStep(rung, unit)) })
  return workings
}

function parallelSteps({ facts, pulsedOhm: coilOhm }: RunFacts): readonly string[] {
  if (facts.valves.length < 2 || isAbsent(coilOhm)) return []
  const parts = facts.valves.map(valve => `1 / ${ohmText(valve.coilResistance?.si ?? 0)}`)
  return [`1 / (${parts.join(' + ')}) = ${ohmText(coilOhm)} for ${parts.length} coils side by side`]
}
