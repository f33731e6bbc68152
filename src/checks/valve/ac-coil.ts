import { isPresent } from '../../base/absent.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Site, Valve } from '../../model/site.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { runsInService } from '../wire/subject.ts'
import type { WiredRun } from '../wire/subject.ts'
import { offBy, readingsOf } from './readings.ts'
import type { OhmReading } from './readings.ts'

/** Good 24 V AC coils read 20 to 60 Ω: common practice, no source. Some DC latching coils read as much, so ohms alone only warn. */
const AC_LEAST_OHM = 20
const AC_MOST_OHM = 60

export const acCoil: SiteCheck = {
  card: {
    code: 'valve/ac-coil',
    severity: 'error',
    looksAt:
      'A coil that is made for 24 V AC, by its marking, or that reads like one, on a controller that sends pulses.',
    why: 'A 24 V AC coil has no magnet to latch, so a pulse cannot hold it open, and the controller supplies nothing between pulses.',
    sources: ['common-practice', 'project-rule'],
    fix: 'Swap the coil for a DC latching one that fits the valve.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: 24 V AC }, wire: [{ size: 1.5 mm², length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const run of runsInService(site)) {
      const { marked, reading, statedOhm } = signsOfAc(run, site, plan)
      if (marked) {
        report({
          subject: run.subject,
          at: at(marked, 'coil'),
          message: `${run.name}: the coil is marked 24 V AC and ${run.controller} sends DC pulses.`,
          fix: 'Swap the coil for a DC latching one that fits the valve; keep the old one out of the spares.'
        })
      } else if (reading) {
        const sheet = statedOhm === undefined ? '' : `; its sheet says ${roundedText(statedOhm, 2)}\u00a0Ω`
        report({
          subject: run.subject,
          at: reading.at,
          severity: 'warning',
          message: `${run.name}: the coil reads ${showStated(reading.ohm)}, as a 24 V AC coil does${sheet}.`,
          fix: 'Read the marking on the coil. If it says AC, swap it for a DC latching coil. Ohms alone do not tell the two kinds apart.',
          values: { measured_ohm: reading.ohm.si, ...(statedOhm === undefined ? {} : { stated_ohm: statedOhm }) }
        })
      }
    }
  }
}

/** What says that a coil is made for AC: its marking, or the last reading of it. */
export interface SignsOfAc {
  readonly marked?: Valve
  readonly reading?: OhmReading
  /** Of the coil, or of the coils side by side, where it is stated. */
  readonly statedOhm?: number
}

export function signsOfAc(run: WiredRun, site: Site, plan: Plan): SignsOfAc {
  const marked = run.valves.find(valve => valve.coil === '24 V AC')
  if (marked) return { marked }
  const coilOhm = plan.wires.get(run.id)?.coilOhm
  const stated = coilOhm !== undefined && isPresent(coilOhm) ? { statedOhm: coilOhm } : {}
  const reading = readingsOf(site, run, 'coil', plan.on).at(-1)
  if (!reading || reading.ohm.si < AC_LEAST_OHM || reading.ohm.si > AC_MOST_OHM) return stated
  const asStated = stated.statedOhm !== undefined && offBy(reading.ohm.si, stated.statedOhm) === undefined
  return asStated ? stated : { ...stated, reading }
}

/** True where this check speaks, so that others need not. */
export function looksAc(run: WiredRun, site: Site, plan: Plan): boolean {
  const { marked, reading } = signsOfAc(run, site, plan)
  return marked !== undefined || reading !== undefined
}
