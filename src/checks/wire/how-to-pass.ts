import { isPresent } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WirePlan } from '../../plan/plan.ts'

/** "2.5 mm² would pass (5.86 V at the coil), or a run of at most 46.7 m at the size there is." */
export function howToPass(wire: WirePlan, units: UnitSystem): string {
  const shorter =
    isPresent(wire.longestM) && wire.longestM > 0 ? `a run of at most ${lengthAtMost(wire.longestM, units)}` : undefined
  const volts = wire.passingVolt === undefined ? '' : ` (${roundedText(wire.passingVolt, 2)}\u00a0V at the coil)`
  const thicker = isPresent(wire.passingSize) ? `${showWireSize(wire.passingSize)} would pass${volts}` : undefined
  if (thicker && shorter) return `${thicker}, or ${shorter} at the size there is.`
  if (thicker) return `${thicker}.`
  if (shorter) return `No size of the range passes at this length. Use ${shorter}, or bring the controller closer.`
  return 'No wire would pass, however short: use a coil that needs less, or another controller.'
}

/** Rounded down to what is shown, so that a run of just that length passes. */
export function lengthAtMost(meters: number, units: UnitSystem): string {
  const [unit, step] = units === 'us' ? (['ft', 1] as const) : (['m', 0.1] as const)
  return `${roundedText(floorTo(fromSi(meters, unit, 'length'), step), 1)}\u00a0${unit}`
}

/** A length that is a whole number of steps but for its last bits counts as whole. */
export function floorTo(value: number, step: number): number {
  return Math.floor(value / step + 1e-6) * step
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
      .replaceAll(/[^a-z0-9.]+/giu, '_')
      .toLowerCase()
    values[`longest_at_${key}_${unit}`] = fromSi(longestM, unit, 'length')
  }
  return values
}
