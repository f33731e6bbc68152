import { isPresent } from '../../base/absent.ts'
import { roundedText, show } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
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
    valves:
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
      const wire = plan.wires.get(station.id)
      if (station.valves.length < 2 || !wire || !isPresent(wire.coilOhm)) continue
      const longest = isPresent(wire.longestM)
        ? ` The run may be ${show(wire.longestM, 'run', site.units)} at most.`
        : ''
      report({
        subject: station.zone,
        at: at(station),
        message: `${stationName(station)}: ${station.valves.length} coils side by side read ${roundedText(wire.coilOhm, 2)} Ω together.${longest}`,
        fix: 'See each valve open and close under pressure; the two leads of every coil go the same way round.',
        values: { coil_ohm: wire.coilOhm, valves: station.valves.length }
      })
    }
  }
}
