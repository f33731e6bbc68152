import { isPresent } from '../../base/absent.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { lengthAtMost } from './how-to-pass.ts'
import { stationName, stationsInService } from './subject.ts'

export const parallelValves: SiteCheck = {
  card: {
    code: 'wire/parallel-valves',
    severity: 'note',
    looksAt: 'Two or more coils wired side by side on one output.',
    why: 'Each coil draws its own current through the same wire, so two equal valves halve the loop that is allowed. Polarity must match on both.',
    sources: ['ohms-law'],
    fix: 'See that the polarity matches, and expect the combined resistance on the meter.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve:
      - { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V }
      - { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V }
    wire: [{ size: 1.5 mm², length: 20 m }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V }
    wire: [{ size: 1.5 mm², length: 20 m }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const coils = station.valves.length
      const wire = plan.wires.get(station.id)
      if (coils < 2 || !wire) continue
      const { coilOhm, longestM } = wire
      const together = isPresent(coilOhm) ? `read ${roundedText(coilOhm, 2)}\u00a0Ω together` : 'share one output'
      const longest = isPresent(longestM) ? ` The run may be ${lengthAtMost(longestM, site.units)} at most.` : ''
      report({
        subject: station.zone,
        at: at(station, 'valve'),
        message: `${stationName(station)}: ${coils} coils side by side ${together}.${longest}`,
        fix: 'See each valve open and close under pressure; the two leads of every coil go the same way round.',
        values: { valves: coils, ...(isPresent(coilOhm) ? { coil_ohm: coilOhm } : {}) }
      })
    }
  }
}
