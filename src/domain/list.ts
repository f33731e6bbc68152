import { batteryLife } from './power/battery-life.ts'
import { boxLoad } from './box/box-load.ts'
import type { Calculation } from './calculation.ts'
import { coilVoltage } from './wire/coil-voltage.ts'
import { coverDepth } from './burial/cover-depth.ts'
import { dueDateCard } from './dates/due-date.ts'
import { monthlyMinutesCard } from './schedule/monthly-minutes.ts'
import { pulseCharge } from './power/pulse-charge.ts'
import { qrSizeCard } from './qr/qr-size.ts'
import { resistanceAt } from './wire/resistance-at.ts'
import { runSequenceCard } from './schedule/run-sequence.ts'
import { tagCheckCard } from './tags/tag-check.ts'
import { trench } from './burial/trench.ts'
import { voltageDrop } from './wire/voltage-drop.ts'
import { wateringDaysCard } from './schedule/watering-days.ts'
import { wireChoose } from './wire/wire-choose.ts'
import { wireLimit } from './wire/wire-limit.ts'
import { wireLoop } from './wire/wire-loop.ts'
import { wireSize } from './wire/wire-size.ts'

/** All calculation cards, sorted by name. `calc`, `explain` and the appendix find a calculation here and nowhere else. */
export const CALCULATIONS: readonly Calculation[] = [
  batteryLife,
  boxLoad,
  coilVoltage,
  coverDepth,
  dueDateCard,
  monthlyMinutesCard,
  pulseCharge,
  qrSizeCard,
  resistanceAt,
  runSequenceCard,
  tagCheckCard,
  trench,
  voltageDrop,
  wateringDaysCard,
  wireChoose,
  wireLimit,
  wireLoop,
  wireSize
]
