import { isPresent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { OhmOf, Site } from '../../model/site.ts'
import type { Plan, WirePlan } from '../../plan/plan.ts'
import { OHM_WORDS } from '../../plan/trends.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { looksAc } from '../valve/ac-coil.ts'
import { coilFix } from '../valve/coil-resistance-off.ts'
import { dayText, offBy, offText, onTheDay, readingsOf } from '../valve/readings.ts'
import type { OhmReading } from '../valve/readings.ts'
import { suggests } from './reading-suggests.ts'
import { runsInService } from './subject.ts'
import type { WiredRun } from './subject.ts'

export const readingOff: SiteCheck = {
  card: {
    code: 'wire/reading-off',
    severity: 'warning',
    looksAt:
      'The last reading of a loop at the controller, against wire and coil together; more than 20 % is off. Where the coil is not stated, readings are held against the first one.',
    why: 'A splice that corrodes reads high long before the valve stops, and a short reads low.',
    sources: ['ohms-law', 'common-practice', 'project-rule'],
    fix: 'Measure again with the leads off the controller, then at the valve, and look at the splices between.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    wire: [{ size: 1.5 mm², length: 30 m }]
    readings: [{ on: 2026-03-20, coil: 6.1 ohm, loop: 9.4 ohm }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    wire: [{ size: 1.5 mm², length: 30 m }]
    readings: [{ on: 2026-03-20, coil: 6.1 ohm, loop: 6.8 ohm }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const run of runsInService(site)) {
      if (looksAc(run, site, plan)) continue
      for (const half of HALVES) {
        const held = heldAgainst(run, half, site, plan)
        const off = held && offBy(held.reading.ohm.si, held.expectedOhm)
        if (!held || off === undefined) continue
        const { reading, what, expectedOhm, against } = held
        report({
          subject: run.subject,
          at: reading.at,
          message:
            `${run.name}: the ${OHM_WORDS[what]} read ${showStated(reading.ohm)} on ${reading.on}, ${offText(off)} than ` +
            `${roundedText(expectedOhm, 2)}\u00a0Ω (${against}).`,
          fix: what === half.coil ? coilFix(off) : (held.suggests ?? (off > 0 ? HIGH : LOW)),
          values: { measured_ohm: reading.ohm.si, expected_ohm: expectedOhm, off_percent: off * 100 }
        })
      }
    }
  }
}

const HIGH =
  'High means a bad or wet splice, or a nicked wire: open the splices, make them again with sealed connectors, and measure again.'
const LOW = 'Low means a short, or two coils on one output: part the wires at the valve and measure each side.'

/** A data plate tells the coil at 20 °C. */
const NO_DAY = {}

/** The pair of a coil; of three leads, common to open and common to close. */
interface Half {
  readonly loop: OhmOf
  readonly coil: OhmOf
  readonly coilOhm: (wire: WirePlan | undefined) => Maybe<number> | undefined
}

const HALVES: readonly Half[] = [
  { loop: 'loop', coil: 'coil', coilOhm: wire => wire?.coilOhm },
  { loop: 'closingLoop', coil: 'closingCoil', coilOhm: wire => wire?.closing?.coilOhm }
]

interface Held {
  readonly what: OhmOf
  readonly reading: OhmReading
  readonly expectedOhm: number
  /** Where the expected figure comes from, for the message. */
  readonly against: string
  /** What such a figure looks like, where it looks like one thing. */
  readonly suggests?: string
}

/** The last loop against what wire and coil come to; else the last loop or coil against the first one that was read. */
function heldAgainst(run: WiredRun, half: Half, site: Site, plan: Plan): Held | undefined {
  const loops = readingsOf(site, run, half.loop, plan.on)
  const coils = readingsOf(site, run, half.coil, plan.on)
  const wire = plan.wires.get(run.id)
  const [lastLoop, lastCoil] = [loops.at(-1), coils.at(-1)]
  const statedOhm = half.coilOhm(wire)
  // A coil that was measured stands for itself: whether it is the right one is told by the valve's own check.
  const coilOhm = lastCoil?.ohm.si ?? (statedOhm !== undefined && isPresent(statedOhm) ? statedOhm : undefined)
  if (lastLoop && coilOhm !== undefined && wire && isPresent(wire.loopOhm)) {
    const wireOhm = onTheDay(wire.loopOhm, lastLoop)
    // A coil that was measured on another day was as warm as that day; without its temperature it stands as read.
    const coilThenOhm =
      lastCoil && !lastCoil.temperature ? coilOhm : onTheDay(coilOhm / onTheDay(1, lastCoil ?? NO_DAY), lastLoop)
    const parts = `${roundedText(wireOhm, 2)} of wire, ${roundedText(coilThenOhm, 2)} of coil${dayText(lastLoop)}`
    const told = suggests({
      measuredOhm: lastLoop.ohm.si,
      wireOhm,
      coilOhm: coilThenOhm,
      coils: Math.max(1, run.valves.length)
    })
    return {
      what: half.loop,
      reading: lastLoop,
      expectedOhm: wireOhm + coilThenOhm,
      against: parts,
      ...(told === undefined ? {} : { suggests: told })
    }
  }
  const loop = sinceFirst(half.loop, loops)
  if (loop) return loop
  return statedOhm !== undefined && isPresent(statedOhm) ? undefined : sinceFirst(half.coil, coils)
}

function sinceFirst(what: OhmOf, readings: readonly OhmReading[]): Held | undefined {
  const [first, last] = [readings[0], readings.at(-1)]
  if (!first || !last || first === last) return undefined
  return { what, reading: last, expectedOhm: first.ohm.si, against: `what it read on ${first.on}` }
}
