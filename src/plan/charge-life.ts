import { isAbsent, isPresent, absent } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import type { Worked } from '../domain/calculation.ts'
import { figures, measure } from '../domain/figures.ts'
import { batteryKind } from '../domain/power/battery-kind.ts'
import { yearlyLoss } from '../domain/power/cell-climate.ts'
import { YEAR_DAYS } from '../domain/power/life.ts'
import { LONGEST_DAYS, daysUntilSpent } from '../domain/power/spent-days.ts'
import type { Controller, Site } from '../model/site.ts'
import { SELF_DISCHARGE_A_YEAR, USABLE_SHARE } from '../reference/batteries.ts'
import { MONTH_NAMES } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { COMMON_MONTH_DAYS } from './month-days.ts'
import type { FittedSet } from './fitted-set.ts'
import { coldestMonth } from './coldest-month.ts'
import type { ChargeLife } from './power-plan.ts'
import { sheetPulseMah } from './sheet-charge.ts'
import { monthMeansC } from './site-means.ts'

type DatedSet = FittedSet & { readonly fitted: IsoDate }

/**
 * How long the charge of a set lasts. Undefined where the product sheet states neither what is drawn all the time nor what a pulse takes, or
 * where no capacity is known: the interval then stands alone. What is not stated of the two is left out, so the figure is then the most it can be.
 */
export function chargeLife(
  site: Site,
  controller: Controller,
  set: DatedSet,
  pulses: readonly number[]
): Worked<ChargeLife> | undefined {
  const { sheet } = controller
  // Beside a panel or an adapter the cells only stand by, and nothing is drawn from them that a sheet states.
  if (controller.power !== 'battery') return undefined
  const capacity = capacityOf(controller, set)
  if (!sheet || !capacity || (sheet.drain === undefined && sheet.pulse === undefined)) return undefined
  const standing = sheet.drain ? sheet.drain.si * 24_000 : absent('the sheet does not say what is drawn all the time')
  const pulse = sheetPulseMah(sheet.pulse, setVolt(set))
  const usable = sheet.battery?.usable?.si ?? USABLE_SHARE
  const means = monthMeansC(site.climate)
  const statedLoss = sheet.battery?.selfDischarge?.si ?? SELF_DISCHARGE_A_YEAR
  const loss = isPresent(means) ? yearlyLoss(statedLoss, means) : statedLoss
  const coldest = coldestMonth(site, controller, set.kind, pulses)
  const perDay = (isPresent(standing) ? standing : 0) + (capacity.mah * loss) / YEAR_DAYS
  const pulseMah = isPresent(pulse) ? pulse.value : 0
  const byMonth = pulses.map((count, index) => perDay + (count / (COMMON_MONTH_DAYS[index] ?? 30)) * pulseMah)
  const counted = capacity.mah * usable * (coldest?.share ?? 1)
  const days = daysUntilSpent(counted, byMonth, set.fitted)
  const value: ChargeLife = {
    capacityMah: capacity.mah,
    capacityBy: capacity.by,
    usable,
    usableBy: sheet.battery?.usable ? 'sheet' : 'common practice',
    ...(coldest ? { coldest } : {}),
    standingMah: standing,
    pulseMah: isPresent(pulse) ? pulse.value : pulse,
    pulsesInYear: sum(pulses),
    yearlyLoss: loss,
    lossBy: sheet.battery?.selfDischarge ? 'sheet' : 'common practice',
    temperature: isPresent(means) ? { meanC: sum(means) / 12 } : means,
    inYearMah: {
      standing: (isPresent(standing) ? standing : 0) * YEAR_DAYS,
      pulses: sum(pulses) * pulseMah,
      lost: capacity.mah * loss
    },
    days,
    beyond: days >= LONGEST_DAYS
  }
  return { value, steps: steps(value, isPresent(pulse) ? pulse.steps : [], counted, set.fitted) }
}

function capacityOf({ sheet }: Controller, set: FittedSet): { mah: number; by: ChargeLife['capacityBy'] } | undefined {
  const stated = sheet?.battery?.capacity
  if (stated) return { mah: stated.si / 3.6, by: 'sheet' }
  const kind = batteryKind(set.kind)
  // Cells of a set stand in series, as far as nothing else is said, so the charge is that of one.
  return kind ? { mah: kind.capacityMah, by: 'table' } : undefined
}

function setVolt({ kind, count }: FittedSet): number | undefined {
  const known = batteryKind(kind)
  // Two 9 V batteries may stand side by side; fewer volts take more charge, which is the safe side.
  return known && (known.size === '9 V' ? known.nominalVolt : known.nominalVolt * count)
}

function steps(life: ChargeLife, pulseSteps: readonly string[], counted: number, fitted: IsoDate): readonly string[] {
  const {
    capacityMah,
    capacityBy,
    usable,
    coldest,
    standingMah,
    pulseMah,
    pulsesInYear,
    yearlyLoss: loss,
    inYearMah
  } = life
  const mah = (amount: number) => measure(amount, 4, 'mAh')
  const percent = (share: number) => measure(share * 100, 3, '%')
  const less = coldest !== undefined && coldest.share < 1
  const coldWords = less
    ? ` × ${percent(coldest.share)} for ${MONTH_NAMES[coldest.month - 1]} at ${measure(coldest.meanC, 3, '°C')}`
    : ''
  const mean = isAbsent(life.temperature)
    ? 'temperature not known'
    : `mean of the year ${measure(life.temperature.meanC, 3, '°C')}, cold given no credit`
  return [
    `capacity by the ${capacityBy === 'sheet' ? 'product sheet' : 'table of typical cells'}: ${mah(capacityMah)} × ${percent(usable)}${coldWords} = ${mah(counted)}`,
    isAbsent(standingMah)
      ? `${standingMah.reason}: not counted`
      : `drawn all the time: ${mah(standingMah)} a day, ${mah(inYearMah.standing)} a year`,
    ...pulseSteps,
    isAbsent(pulseMah)
      ? `${pulseMah.reason}: not counted`
      : `${figures(pulsesInYear, 6)} pulses in the simulated year: ${mah(inYearMah.pulses)}`,
    `lost by itself: ${percent(loss)} a year (${mean}): ${mah(inYearMah.lost)}`,
    life.beyond
      ? `counted month by month from ${fitted}: more than 20 years, so it sets no date`
      : `counted month by month from ${fitted}: ${figures(life.days, 6)} whole days`
  ]
}
