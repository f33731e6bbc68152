import { isPresent } from '../../base/absent.ts'
import { bothReadingsOf } from '../../plan/wires.ts'
import type { WirePlan } from '../../plan/plan.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { runsInService } from './subject.ts'

export const sizeAmbiguous: SiteCheck = {
  card: {
    code: 'wire/size-ambiguous',
    severity: 'error',
    looksAt: 'A wire size written in plain "mm", which may mean the diameter or the area.',
    why: 'Taken the wrong way round the loop is far off, and the mistake hides a run that is too long.',
    sources: ['astm-b258', 'iec-60228', 'project-rule'],
    fix: 'Write mm² for the area, or "mm diameter".',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 0.8 mm, length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 0.8 mm diameter, length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const run of runsInService(site)) {
      for (const segment of run.wire) {
        for (const key of ['size', 'common'] as const) {
          const size = segment[key]
          if (size?.kind !== 'ambiguous') continue
          const { mm } = size
          const { asDiameter, asArea } = bothReadingsOf(site, run)
          report({
            subject: run.subject,
            at: at(segment, key),
            message:
              `${run.name}: "${mm} mm" may be a diameter or an area. As a diameter the loop is ${reading(asDiameter)}; ` +
              `as mm² it is ${reading(asArea)}.`,
            fix: `Measure the bare conductor, then write "${mm} mm²" or "${mm} mm diameter". Until then the loop is not computed.`,
            values: { ...figures(asDiameter, 'diameter'), ...figures(asArea, 'area') }
          })
        }
      }
    }
  }
}

/** "4.8 Ω and the coil gets 4.34 V". */
function reading({ loopOhm, coilVolt }: WirePlan): string {
  const loop = isPresent(loopOhm) ? `${roundedText(loopOhm, 2)}\u00a0Ω` : 'not known'
  return isPresent(coilVolt) ? `${loop} and the coil gets ${roundedText(coilVolt, 2)}\u00a0V` : loop
}

function figures({ loopOhm, coilVolt }: WirePlan, as: 'diameter' | 'area'): Record<string, number> {
  return {
    ...(isPresent(loopOhm) ? { [`loop_ohm_as_${as}`]: loopOhm } : {}),
    ...(isPresent(coilVolt) ? { [`coil_volt_as_${as}`]: coilVolt } : {})
  }
}
