import { localPositionCard } from './drawing/local-position.ts'
import { tiePosition } from './drawing/tie-position.ts'
import { adviseCard } from './water/advise-card.ts'
import { applicationRateCard } from './water/application-rate.ts'
import { batteryLife } from './power/battery-life.ts'
import { boxLoad } from './box/box-load.ts'
import type { Calculation } from './calculation.ts'
import { coilVoltage } from './wire/coil-voltage.ts'
import { coverDepth } from './burial/cover-depth.ts'
import { cycleSoakCard } from './water/cycle-soak-card.ts'
import { daysByAddressCard } from './schedule/days-by-address.ts'
import { dueDateCard } from './dates/due-date.ts'
import { effectiveRainCard } from './water/effective-rain-card.ts'
import { etoHargreaves } from './climate/eto-hargreaves.ts'
import { etoPenmanMonteith } from './climate/eto-penman-monteith.ts'
import { etoZoneCard } from './climate/eto-zone.ts'
import { expectedReadingCard } from './wire/expected-reading.ts'
import { landscapeCoefficientCard } from './water/landscape-coefficient.ts'
import { meterUnits } from './water/meter-units.ts'
import { monthFromDaysCard } from './climate/month-from-days.ts'
import { monthlyMinutesCard } from './schedule/monthly-minutes.ts'
import { monthlyPercentCard } from './water/monthly-percent-card.ts'
import { phaseNeedCard } from './water/phase-need-card.ts'
import { pipeLoss } from './supply/pipe-loss-card.ts'
import { pulseCharge } from './power/pulse-charge.ts'
import { qrSizeCard } from './qr/qr-size.ts'
import { readingTrendCard } from './wire/reading-trend.ts'
import { resistanceAt } from './wire/resistance-at.ts'
import { runSequenceCard } from './schedule/run-sequence.ts'
import { runTimeCard } from './water/run-time-card.ts'
import { soilReservoirCard } from './water/soil-reservoir-card.ts'
import { solarGeometry } from './climate/solar-geometry.ts'
import { solarYield } from './power/solar-yield.ts'
import { supplyPeak } from './supply/supply-peak.ts'
import { tagCheckCard } from './tags/tag-check.ts'
import { trench } from './burial/trench.ts'
import { lowHeadVolume } from './supply/drained-volume.ts'
import { meterLimit } from './supply/meter-limit.ts'
import { pressureLeft } from './supply/pressure-left-card.ts'
import { uniformityCard } from './water/uniformity-card.ts'
import { voltageDrop } from './wire/voltage-drop.ts'
import { waterAllowance } from './water/water-allowance.ts'
import { waterBudgetCard } from './water/water-budget-card.ts'
import { wateringDaysCard } from './schedule/watering-days.ts'
import { yearTotalCard } from './schedule/year-total.ts'
import { winterizeByCard } from './climate/winterize-by.ts'
import { wireChoose } from './wire/wire-choose.ts'
import { wireLimit } from './wire/wire-limit.ts'
import { wireLoop } from './wire/wire-loop.ts'
import { wireSize } from './wire/wire-size.ts'

/** All calculation cards, sorted by name. `calc`, `explain` and the appendix find a calculation here and nowhere else. */
export const CALCULATIONS: readonly Calculation[] = [
  applicationRateCard,
  batteryLife,
  boxLoad,
  coilVoltage,
  coverDepth,
  cycleSoakCard,
  daysByAddressCard,
  dueDateCard,
  effectiveRainCard,
  etoHargreaves,
  etoPenmanMonteith,
  etoZoneCard,
  expectedReadingCard,
  landscapeCoefficientCard,
  localPositionCard,
  lowHeadVolume,
  meterLimit,
  meterUnits,
  monthFromDaysCard,
  monthlyMinutesCard,
  monthlyPercentCard,
  phaseNeedCard,
  pipeLoss,
  pressureLeft,
  adviseCard,
  pulseCharge,
  qrSizeCard,
  readingTrendCard,
  resistanceAt,
  runSequenceCard,
  runTimeCard,
  soilReservoirCard,
  solarGeometry,
  solarYield,
  supplyPeak,
  tagCheckCard,
  tiePosition,
  trench,
  uniformityCard,
  voltageDrop,
  waterAllowance,
  waterBudgetCard,
  wateringDaysCard,
  winterizeByCard,
  wireChoose,
  wireLimit,
  wireLoop,
  wireSize,
  yearTotalCard
]
