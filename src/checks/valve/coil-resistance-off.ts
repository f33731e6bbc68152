import { isPresent } from '../../base/absent.ts'
import { OHM_WORDS } from '../../plan/trends.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { runsInService } from '../wire/subject.ts'
import { looksAc } from './ac-coil.ts'
import { dayText, offBy, offText, onTheDay, readingsOf } from './readings.ts'

export const coilResistanceOff: SiteCheck = {
  card: {
    code: 'valve/coil-resistance-off',
    severity: 'warning',
    looksAt: 'The last reading of a coil, against the resistance that its sheet states; more than 20 % is off.',
    why: 'Another coil than the one on the sheet changes the voltage at the coil, and a coil that drifts is about to fail.',
    sources: ['common-practice', 'project-rule'],
    fix: 'Measure again with both leads off. Swap the coil, or correct the resistance in the site file.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    readings: [{ on: 2026-03-20, coil: 8.1 ohm }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm }
    readings: [{ on: 2026-03-20, coil: 6.1 ohm }]`
    }
  },
  run: ({ site, plan, on }, report) => {
    for (const run of runsInService(site)) {
      const wire = plan.wires.get(run.id)
      if (looksAc(run, site, plan)) continue
      for (const [what, statedOhm] of [
        ['coil', wire?.coilOhm],
        ['closingCoil', wire?.closing?.coilOhm]
      ] as const) {
        const reading = readingsOf(site, run, what, on).at(-1)
        if (!reading || statedOhm === undefined || !isPresent(statedOhm)) continue
        const expectedOhm = onTheDay(statedOhm, reading)
        const off = offBy(reading.ohm.si, expectedOhm)
        if (off === undefined) continue
        const coils =
          run.valves.length > 1 ? `the ${run.valves.length} ${OHM_WORDS[what]}s read` : `the ${OHM_WORDS[what]} read`
        report({
          subject: run.subject,
          at: reading.at,
          message:
            `${run.name}: ${coils} ${showStated(reading.ohm)} on ${reading.on}, ${offText(off)} than the ` +
            `${roundedText(expectedOhm, 2)}\u00a0Ω ${run.valves.length > 1 ? 'of their sheets together' : 'of its sheet'}${dayText(reading)}.`,
          fix: coilFix(off),
          values: { measured_ohm: reading.ohm.si, stated_ohm: statedOhm, off_percent: off * 100 }
        })
      }
    }
  }
}

/** What to do about a coil that reads high or low. */
export const coilFix = (off: number): string => (off > 0 ? HIGH : LOW)

const HIGH =
  'Measure again with both leads off the wire. If it stays high it is another coil, or one that is failing: swap it, or write what its marking says.'
const LOW =
  'Measure again with both leads off the wire. Near 0 Ω the coil is shorted: swap it. Otherwise write what its marking says.'
