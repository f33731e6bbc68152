import { awgAreaMm2 } from '../../domain/wire/awg.ts'
import { roundedText } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName } from './subject.ts'

/** Between neighbouring gauges the area differs by 21 %, so 3 % tells rounding from a slip. */
const AGREES_WITHIN = 0.03

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
    for (const station of site.stations) {
      for (const segment of station.wire) {
        const { size } = segment
        if (size.kind !== 'pair') continue
        const area = awgAreaMm2(size.gauge)
        if (Math.abs(size.mm2 / area - 1) <= AGREES_WITHIN) continue
        const gauge = showWireSize({ kind: 'awg', gauge: size.gauge })
        report({
          subject: station.zone,
          at: at(segment, 'size'),
          message: `${stationName(station)}: ${gauge} is ${roundedText(area, 2)} mm², not ${size.mm2} mm².`,
          fix: `Write "${gauge}" or "${size.mm2} mm²", whichever is printed on the cable. The gauge is used until then.`,
          values: { awg_area_mm2: area, stated_mm2: size.mm2 }
        })
      }
    }
  }
}
