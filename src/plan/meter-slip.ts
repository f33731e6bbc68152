import { isAbsent } from '../base/absent.ts'
import { meteredM3 } from '../domain/water/meter-units.ts'
import { METER_UNITS } from '../reference/plausible.ts'
import { quantity } from '../units/quantity.ts'
import type { Quantity } from '../units/quantity.ts'
import type { MeterSlip } from './budget-plan.ts'

/** Beyond a twentieth and twenty times of what was programmed a unit has slipped; within a half and twice it has not. Rule of the project. */
const FAR = 20
const NEAR = 2

/**
 * The unit that a reading was probably in, where the meter seems to have run backward or some twenty times too far or too little, and
 * another unit brings it to about what was programmed. Undefined where nothing was programmed: there is nothing to tell it by.
 */
export function meterSlip(earlierM3: number, reading: Quantity<'volume'>, programmedM3: number): MeterSlip | undefined {
  if (!(programmedM3 > 0)) return undefined
  const metered = meteredM3(earlierM3, reading.si)
  if (!isAbsent(metered) && isWithin(metered / programmedM3, FAR)) return undefined
  for (const unit of METER_UNITS) {
    const counted = meteredM3(earlierM3, quantity(reading.value, unit, 'volume').si)
    if (!isAbsent(counted) && isWithin(counted / programmedM3, NEAR))
      return { value: reading.value, written: reading.unit, unit, meteredM3: counted }
  }
  return undefined
}

const isWithin = (ratio: number, times: number): boolean => ratio >= 1 / times && ratio <= times
