import { isPresent } from '../../base/absent.ts'
import { roundedText, show } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import { fromSi } from '../../units/quantity.ts'
import type { WirePlan } from '../../plan/plan.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from './subject.ts'

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
    for (const station of stationsInService(site)) {
      const wire = plan.wires.get(station.id)
      const limit = wire?.limits.find(one => one.form === 'voltage')
      if (!wire || !limit || limit.passes || !isPresent(wire.coilVolt) || !isPresent(wire.loopOhm)) continue
      report({
        subject: station.zone,
        at: at(station, 'wire', 0, 'length'),
        message:
          `${stationName(station)}: the coil gets ${show(wire.coilVolt, 'voltage', 'metric')} of the pulse; it needs ` +
          `${roundedText(wire.lowestVolt ?? 0, 2)} V. The loop of ${show(wire.lengthM, 'run', site.units)} is ${show(wire.loopOhm, 'resistance', 'metric')}.`,
        fix: howToPass(wire, site.units),
        values: { ...figures(wire, site.units), coil_volt: wire.coilVolt, lowest_volt: wire.lowestVolt ?? 0 }
      })
    }
  }
}

/** "2.5 mm² would pass (5.86 V), or a run of 46.8 m." */
export function howToPass(wire: WirePlan, units: UnitSystem): string {
  const shorter = isPresent(wire.longestM) ? `a run of at most ${show(wire.longestM, 'run', units)}` : undefined
  const volts = wire.passingVolt === undefined ? '' : ` (${roundedText(wire.passingVolt, 2)} V at the coil)`
  const thicker = isPresent(wire.passingSize) ? `${showWireSize(wire.passingSize)} would pass${volts}` : undefined
  if (thicker && shorter) return `${thicker}, or ${shorter} at the size there is.`
  if (shorter) return `No size of the range passes at this length; use ${shorter}, or bring the controller closer.`
  return 'Bring the controller closer to the valve.'
}

/** Figures that every wire finding carries: loop, the size that passes, the longest run by size, in the site's own length unit. */
export function figures(wire: WirePlan, units: UnitSystem): Record<string, number | string> {
  const unit = units === 'us' ? 'ft' : 'm'
  const values: Record<string, number | string> = {}
  if (isPresent(wire.loopOhm)) values['loop_ohm'] = wire.loopOhm
  if (isPresent(wire.longestM)) values[`longest_${unit}`] = fromSi(wire.longestM, unit, 'length')
  if (isPresent(wire.passingSize)) values['passing_size'] = showWireSize(wire.passingSize).replaceAll('\u00a0', ' ')
  if (wire.passingVolt !== undefined) values['passing_volt'] = wire.passingVolt
  for (const { size, longestM } of wire.longestBySize) {
    const key = showWireSize(size)
      .replace('²', '2')
      .replaceAll(/[\s\u00a0]+/gu, '_')
      .toLowerCase()
    values[`longest_at_${key}_${unit}`] = fromSi(longestM, unit, 'length')
  }
  return values
}
