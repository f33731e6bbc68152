import { absent, isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sortedBy, sum } from '../base/collections.ts'
import { coilVolt } from '../domain/wire/coil-voltage.ts'
import { ladderFrom } from '../domain/wire/ladder.ts'
import { isCap, judge } from '../domain/wire/limit.ts'
import { SOIL_C } from '../domain/wire/make.ts'
import type { RunSegment } from '../domain/wire/run.ts'
import { sectionMm2 } from '../domain/wire/section.ts'
import { climb } from '../domain/wire/wire-choose.ts'
import type { Rung } from '../domain/wire/wire-choose.ts'
import { loopOhm, withSplices } from '../domain/wire/wire-loop.ts'
import { lengthText } from '../domain/wire/words.ts'
import { showWireSize } from '../units/wire-size.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { WireLimit, WirePlan, Working } from './plan.ts'
import { closingOhm, coilsOhm, lowestVolts, runSegments, splicesOhm, statedLimits } from './wire-facts.ts'
import type { StatedLimit, WireFacts } from './wire-facts.ts'
import { usableLimits } from './wire-run.ts'
import type { RunFacts } from './wire-run.ts'
import { wireWorkings } from './wire-workings.ts'

export interface WirePlanned {
  readonly plan: WirePlan
  readonly workings: readonly Working[]
}

/** One pair of wires, worked through: loop, voltage at the coil, limits, and the size that would pass. Absent figures carry their reason. */
export function planWire(facts: WireFacts): WirePlanned {
  const segments = runSegments(facts.wire)
  const [spliceOhm, coilOhm] = [splicesOhm(facts.splices), coilsOhm(facts.valves)]
  const wires = loopOhm(segments, SOIL_C)
  const run: RunFacts = {
    facts,
    segments,
    lengthM: sum(segments.map(segment => segment.lengthM)),
    unit: segments[0]?.unit ?? 'm',
    make: segments[0]?.make ?? { conductor: 'solid', coating: 'plain' },
    loop: isAbsent(wires) ? wires : withSplices(wires, spliceOhm),
    spliceOhm,
    coilOhm,
    pulsedOhm: lowerOf(coilOhm, closingOhm(facts.valves))
  }
  const stated = statedLimits(facts, run.pulsedOhm)
  const limits = judgedLimits(stated, run)
  const climbed = isAbsent(run.loop)
    ? run.loop
    : climb(ladder(segments), run.lengthM, usableLimits(stated, run), run.make, spliceOhm)
  return {
    plan: { ...figuresOf(run), ...verdictOf(run, limits), ...choiceOf(climbed, run) },
    workings: wireWorkings(run, stated, climbed)
  }
}

function lowerOf(opening: Maybe<number>, closing: Maybe<number> | undefined): Maybe<number> {
  if (closing === undefined || isAbsent(opening)) return opening
  return isAbsent(closing) ? closing : Math.min(opening, closing)
}

type Figures = Omit<WirePlan, 'limits' | 'governing' | 'longestM' | 'passingSize' | 'passingVolt' | 'longestBySize'>

function figuresOf(run: RunFacts): Figures {
  const { facts, lengthM, loop, coilOhm } = run
  const pulseVolt = facts.sheet?.pulseVolts?.si
  const lowestVolt = lowestVolts(facts.valves)?.si
  const loopValue = isAbsent(loop) ? loop : loop.value
  return {
    station: facts.id,
    lengthM,
    loopOhm: loopValue,
    coilOhm,
    coilVolt: coilVoltOf(run),
    expectedOhm: isAbsent(loopValue) ? loopValue : isAbsent(coilOhm) ? coilOhm : loopValue + coilOhm,
    ...closingOf(run),
    ...(lowestVolt === undefined ? {} : { lowestVolt }),
    ...(pulseVolt === undefined ? {} : { pulseVolt })
  }
}

/** The second winding of a coil with three leads: its ohms at the valve and at the controller. */
function closingOf({ facts, loop }: RunFacts): Pick<WirePlan, 'closing'> {
  const coilOhm = closingOhm(facts.valves)
  if (coilOhm === undefined) return {}
  const expectedOhm = isAbsent(loop) ? loop : isAbsent(coilOhm) ? coilOhm : loop.value + coilOhm
  return { closing: { coilOhm, expectedOhm } }
}

function coilVoltOf({ facts, loop, pulsedOhm: coilOhm }: RunFacts): Maybe<number> {
  const pulseVolt = facts.sheet?.pulseVolts?.si
  if (isAbsent(loop)) return loop
  if (isAbsent(coilOhm)) return coilOhm
  if (pulseVolt === undefined) return absent('the product sheet states no pulse volts')
  return coilVolt({ pulseVolt, coilOhm, loopOhm: loop.value, sourceOhm: 0 })
}

/** A cap on length can be judged whatever the wire; the others need the loop. Limits at a size that cannot be read are left out. */
function judgedLimits(stated: readonly StatedLimit[], run: RunFacts): readonly WireLimit[] {
  return stated.flatMap(({ limit, stated: quantity }) => {
    if (run.lengthM === 0 || (isAbsent(run.loop) && !isCap(limit))) return []
    const loop = isAbsent(run.loop) ? 0 : run.loop.value
    const { lengthM, spliceOhm } = run
    const judged = judge(limit, { lengthM, loopOhm: loop, spliceOhm: isAbsent(run.loop) ? 0 : spliceOhm }, run.make)
    if (isAbsent(judged)) return []
    const size = limit.form === 'length' ? limit.size : undefined
    const coils = limit.form !== 'voltage' && !isCap(limit) && limit.coils > 1 ? { coils: limit.coils } : {}
    return [{ form: limit.form, ...judged, stated: quantity, ...coils, ...(size === undefined ? {} : { size }) }]
  })
}

function verdictOf(run: RunFacts, limits: readonly WireLimit[]): Pick<WirePlan, 'limits' | 'governing' | 'longestM'> {
  const governing = sortedBy(limits, limit => limit.longestM)[0]
  const longestM = isAbsent(run.loop)
    ? run.loop
    : (governing?.longestM ?? absent('the product sheet states no limit to hold the run against'))
  return { limits, longestM, ...(governing ? { governing } : {}) }
}

function choiceOf(
  climbed: Maybe<readonly Rung[]>,
  run: RunFacts
): Pick<WirePlan, 'passingSize' | 'passingVolt' | 'longestBySize'> {
  if (isAbsent(climbed)) return { passingSize: climbed, longestBySize: [] }
  const longestBySize = climbed.map(({ size, longestM }) => ({ size, longestM }))
  const last = climbed.at(-1)
  if (!last?.passes) return { passingSize: absent(noSizeReason(last, run)), longestBySize }
  const volt = last.coilVolt ?? passingVolt(run, last.loopOhm)
  return { passingSize: last.size, longestBySize, ...(volt === undefined ? {} : { passingVolt: volt }) }
}

function passingVolt({ facts, pulsedOhm: coilOhm }: RunFacts, loop: number): number | undefined {
  const pulseVolt = facts.sheet?.pulseVolts?.si
  if (pulseVolt === undefined || isAbsent(coilOhm)) return undefined
  return coilVolt({ pulseVolt, coilOhm, loopOhm: loop, sourceOhm: 0 })
}

function noSizeReason(last: Rung | undefined, { unit }: RunFacts): string {
  if (!last) return 'no size of the range can be used'
  return `no size up to ${showWireSize(last.size)} passes at this length; ${lengthText(last.longestM, unit)} of it would`
}

/** From the thinnest wire of the run upward. */
function ladder(segments: readonly RunSegment[]): readonly WireSize[] {
  const sizes = segments.flatMap(({ size, common }) => (common === undefined ? [size] : [size, common]))
  const thinnest = sortedBy(sizes, size => {
    const section = sectionMm2(size)
    return isPresent(section) ? section : Infinity
  })[0]
  return thinnest === undefined ? [] : ladderFrom(thinnest)
}
