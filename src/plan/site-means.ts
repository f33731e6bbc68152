import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Climate } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'

/** Mean temperature of each month, °C, January first: half way between the mean high and the mean low. */
export function monthMeansC(climate: Climate | undefined): Maybe<readonly number[]> {
  const means = MONTHS.flatMap(month => {
    const [high, low] = [climate?.meanHigh?.[month]?.si, climate?.meanLow?.[month]?.si]
    return high === undefined || low === undefined ? [] : [(high + low) / 2]
  })
  return means.length === 12 ? means : absent('mean high and low are not stated for all twelve months')
}
