import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { effectiveRainM } from '../domain/water/effective-rain.ts'
import type { RainMethod } from '../reference/effective-rain.ts'
import { MONTHS } from '../units/date.ts'
import { monthOfRecord } from './climate-days.ts'
import type { ClimateFacts } from './climate-months.ts'
import type { ClimatePlan } from './climate-plan.ts'

/** Rain of a month, index 0 to 11: as stated, else of the daily record. */
export function rainOf({ climate, record }: ClimateFacts, index: number): Maybe<number> {
  const stated = climate.rain?.[MONTHS[index] ?? 'Jan']
  if (stated) return stated.si
  const month = record?.[index]?.rain
  return month && month.days > 0 ? monthOfRecord(month, index + 1) : absent('the rain of the month is not stated')
}

/** Rain that counts in a month as far as the climate alone tells; under glass none does. */
export function countedRainOf(
  { record }: ClimateFacts,
  index: number,
  of: { readonly rainM: Maybe<number>; readonly method: Maybe<RainMethod>; readonly underGlass: boolean }
): Maybe<number> {
  const { rainM, method, underGlass } = of
  if (isAbsent(method)) return method
  if (underGlass || method === 'none') return 0
  if (method === 'tr-21')
    return isAbsent(rainM) ? rainM : absent('it is told for each zone, by its plants and its soil')
  if (method === 'per-event') {
    const rains = record?.[index]?.rainByEvent
    return rains && rains.days > 0
      ? monthOfRecord(rains, index + 1)
      : absent('single rains are counted: a daily record with rain is due')
  }
  return isAbsent(rainM) ? rainM : effectiveRainM(method, { rainM })
}

/** Rain that counts for a zone: by its own use and the storage of its soil where the method asks for them. */
export function zoneRainM(
  climate: ClimatePlan,
  index: number,
  zone: { readonly useM: number; readonly storageM: Maybe<number> }
): Maybe<number> {
  const month = climate.months[index]
  if (!month) throw new Error(`there is no month ${index}`)
  if (climate.rainMethod !== 'tr-21' || climate.underGlass) return month.effectiveRainM
  if (isAbsent(month.rainM)) return month.rainM
  if (isAbsent(zone.storageM)) return zone.storageM
  return effectiveRainM('tr-21', { rainM: month.rainM, useM: zone.useM, storageM: zone.storageM })
}
