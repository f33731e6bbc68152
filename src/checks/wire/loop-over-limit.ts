import { isPresent } from '../../base/absent.ts'
import { show, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { figures, howToPass } from './coil-voltage-low.ts'
import { stationName, stationsInService } from './subject.ts'

export const loopOverLimit: SiteCheck = {
  card: {
    code: 'wire/loop-over-limit',
    severity: 'error',
    looksAt: "The resistance of both wires of a run, against the loop limit on the controller's product sheet.",
    why: 'The pulse may be too weak to move the valve, and fails first when the battery is low.',
    sources: ['ohms-law', 'iec-60228', 'nbs-100', 'product-sheet'],
    fix: 'Use the next thicker size that passes, or bring the controller closer to the valve.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/loop-limit.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.0 mm², length: 410 m }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/loop-limit.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 2.5 mm², length: 410 m }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const wire = plan.wires.get(station.id)
      const limit = wire?.limits.find(one => one.form === 'loop')
      if (!wire || !limit || limit.passes || !isPresent(wire.loopOhm)) continue
      const controller = site.controllers.find(one => one.id === station.controller)
      report({
        subject: station.zone,
        at: at(station, 'wire', 0, 'length'),
        message:
          `${stationName(station)}: ${show(wire.lengthM, 'run', site.units)} is a loop of ${show(wire.loopOhm, 'resistance', 'metric')}; ` +
          `the limit of ${station.controller} is ${showStated(limit.stated)}.`,
        fix: howToPass(wire, site.units),
        values: {
          ...figures(wire, site.units),
          limit_ohm: limit.stated.si,
          margin_percent: (1 - wire.loopOhm / limit.stated.si) * 100
        },
        related: controller?.sheet ? [{ at: at(controller.sheet, 'limits', 'loop'), note: 'the limit' }] : []
      })
    }
  }
}
