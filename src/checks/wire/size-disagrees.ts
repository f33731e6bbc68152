import { judgePair } from '../../domain/wire/ambiguous.ts'
import { awgAreaMm2 } from '../../domain/wire/awg.ts'
import { roundedText } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { runsInService } from './subject.ts'

export const sizeDisagrees: SiteCheck = {
  card: {
    code: 'wire/size-disagrees',
    severity: 'warning',
    looksAt: 'A wire size given twice, as a gauge and as an area, where the two are not the same wire.',
    why: 'Usually the diameter was copied where the area belongs; one of the two figures is wrong.',
    sources: ['astm-b258', 'project-rule'],
    fix: 'Keep the figure that is printed on the cable and drop the other.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: "12 AWG, 2.05 mm²", length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: "12 AWG, 3.31 mm²", length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const { subject, name, wire } of runsInService(site)) {
      for (const segment of wire) {
        for (const key of ['size', 'common'] as const) {
          const size = segment[key]
          if (size?.kind !== 'pair') continue
          const verdict = judgePair(size.gauge, size.mm2)
          if (verdict === 'agrees') continue
          const area = awgAreaMm2(size.gauge)
          const gauge = showWireSize({ kind: 'awg', gauge: size.gauge })
          const slip = verdict === 'disagrees' ? '' : `; ${size.mm2} mm is its diameter`
          report({
            subject,
            at: at(segment, key),
            message: `${name}: ${gauge} is ${roundedText(area, 2)}\u00a0mm², not ${size.mm2}\u00a0mm²${slip}.`,
            fix: `Write "${gauge}" or "${size.mm2} mm²", whichever is printed on the cable. The gauge is used until then.`,
            values: { awg_area_mm2: area, stated_mm2: size.mm2 }
          })
        }
      }
    }
  }
}
