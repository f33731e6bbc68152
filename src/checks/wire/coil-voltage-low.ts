import { isPresent } from '../../base/absent.ts'
import { show } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { figures, howToPass } from './how-to-pass.ts'
import { runsInService } from './subject.ts'

export const coilVoltageLow: SiteCheck = {
  card: {
    code: 'wire/coil-voltage-low',
    severity: 'error',
    looksAt: 'The voltage left at the coil during the pulse, against the lowest voltage the coil works at.',
    why: 'A pulse that is too weak may open the valve and then fail to close it, first of all when the battery is low or cold.',
    sources: ['ohms-law', 'iec-60228', 'nbs-100', 'product-sheet'],
    fix: 'Use the next thicker size that passes, or bring the controller closer to the valve.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 4.2 ohm, lowest-volts: 5.5 V }
    wire: [{ size: 0.75 mm², length: 128 m }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire, coil-resistance: 4.2 ohm, lowest-volts: 5.5 V }
    wire: [{ size: 2.5 mm², length: 128 m }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { id, subject, name, record, valves, controller } of runsInService(site)) {
      const wire = plan.wires.get(id)
      const limit = wire?.limits.find(one => one.form === 'voltage')
      if (!wire || !limit || limit.passes || !isPresent(wire.coilVolt) || !isPresent(wire.loopOhm)) continue
      const [gets, needs] = toldApart(wire.coilVolt, limit.stated.si, 2)
      const coil = valves.length > 1 ? `the ${valves.length} coils get` : 'the coil gets'
      const sheet = site.controllers.find(one => one.id === controller)?.sheet
      report({
        subject,
        at: at(record, 'wire', 0, 'length'),
        message:
          `${name}: ${coil} ${gets}\u00a0V of the pulse and ${valves.length > 1 ? 'need' : 'needs'} ${needs}\u00a0V. ` +
          `The loop of ${show(wire.lengthM, 'run', site.units)} is ${show(wire.loopOhm, 'resistance', site.units)}.`,
        fix: howToPass(wire, site.units),
        values: { ...figures(wire, site.units), coil_volt: wire.coilVolt, lowest_volt: limit.stated.si },
        related: sheet ? [{ at: at(sheet, 'limits', 'pulse-volts'), note: 'the pulse' }] : []
      })
    }
  }
}
