import { isPresent } from '../../base/absent.ts'
import { bothReadings } from '../../domain/wire/ambiguous.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from './subject.ts'

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
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const wire = plan.wires.get(station.id)
      for (const [index, segment] of station.wire.entries()) {
        if (segment.size.kind !== 'ambiguous') continue
        const readings = bothReadings(segment.size.mm, segment.length.si)
        const values: Record<string, number> = {
          loop_ohm_as_diameter: readings.asDiameter.loopOhm,
          loop_ohm_as_area: readings.asArea.loopOhm
        }
        const volt = (loopOhm: number) =>
          wire?.pulseVolt !== undefined && isPresent(wire.coilOhm)
            ? (wire.pulseVolt * wire.coilOhm) / (wire.coilOhm + loopOhm)
            : undefined
        const [diameterVolt, areaVolt] = [volt(readings.asDiameter.loopOhm), volt(readings.asArea.loopOhm)]
        if (diameterVolt !== undefined) values['coil_volt_as_diameter'] = diameterVolt
        if (areaVolt !== undefined) values['coil_volt_as_area'] = areaVolt
        const mm = segment.size.mm
        report({
          subject: station.zone,
          at: at(segment, 'size'),
          message:
            `${stationName(station)}: "${mm} mm" may be a diameter or an area. As a diameter the loop is ${reading(readings.asDiameter.loopOhm, diameterVolt)}; ` +
            `as mm² it is ${reading(readings.asArea.loopOhm, areaVolt)}.`,
          fix: `Measure the bare conductor, then write "${mm} mm²" or "${mm} mm diameter". Until then the loop is not computed.`,
          values
        })
      }
    }
  }
}

function reading(loopOhm: number, volt: number | undefined): string {
  return `${roundedText(loopOhm, 2)} Ω` + (volt === undefined ? '' : ` and the coil gets ${roundedText(volt, 2)} V`)
}
