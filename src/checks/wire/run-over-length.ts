import { inUnit } from '../../units/quantity.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { figures } from './coil-voltage-low.ts'
import { stationName, stationsInService } from './subject.ts'

export const runOverLength: SiteCheck = {
  card: {
    code: 'wire/run-over-length',
    severity: 'error',
    looksAt: "The length of a run, against the longest run that the controller's product sheet allows at that size.",
    why: 'The maker of the sheet answers for the pulse up to that length and no further.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Shorten the run, use a size that the sheet allows at this length, or bring the controller closer.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/length-cap.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 18 AWG, length: 101 ft }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/length-cap.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 18 AWG, length: 100 ft }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const wire = plan.wires.get(station.id)
      const limit = wire?.limits.find(one => one.form === 'length' && !one.passes)
      if (!wire || !limit) continue
      const unit = limit.stated.unit
      const length = fromSi(wire.lengthM, unit, 'length')
      const most = fromSi(limit.longestM, unit, 'length')
      const atSize = limit.size ? ` at ${showWireSize(limit.size)}` : ''
      const controller = site.controllers.find(one => one.id === station.controller)
      report({
        subject: station.zone,
        at: at(station, 'wire', 0, 'length'),
        message:
          `${stationName(station)}: the run is ${roundedText(length, 1)} ${unit}; the sheet of ${station.controller} allows ` +
          `${showStated(limit.stated)}${atSize}.`,
        fix: `Shorten the run to ${roundedText(most, 1)} ${unit}, or bring ${station.controller} closer.`,
        values: {
          ...figures(wire, site.units),
          [`length_${unit}`]: length,
          [`limit_${unit}`]: inUnit(limit.stated, unit)
        },
        related: controller?.sheet ? [{ at: at(controller.sheet, 'limits', 'lengths'), note: 'the limit' }] : []
      })
    }
  }
}
