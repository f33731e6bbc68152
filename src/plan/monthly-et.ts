import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { ClimatePlan } from './climate-plan.ts'

/** Reference evapotranspiration of twelve months, January first, m. Absent where one of them is not known. */
export function monthlyEtM({ months }: ClimatePlan): Maybe<readonly number[]> {
  const known = months.flatMap(({ etM }) => (isAbsent(etM) ? [] : [etM]))
  return known.length === 12 ? known : absent('the reference evapotranspiration of some months is not known')
}
