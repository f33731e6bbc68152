import { isPresent } from '../../base/absent.ts'
import { addDays, daysBetween } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'
import { figures } from '../../domain/figures.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import type { ChargeLife } from '../../plan/power-plan.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { daysText } from './set-text.ts'

export const chargeShortensLife: SiteCheck = {
  card: {
    code: 'power/charge-shortens-life',
    severity: 'warning',
    looksAt:
      'How long the charge of a set lasts by what its sheet says is drawn, by the pulses of the programs and by self-discharge, against the interval at which it is changed.',
    why: 'A set that is empty before its date leaves every valve as it is, open ones too.',
    sources: ['product-sheet', 'common-practice', 'project-rule'],
    fix: 'Shorten the interval to what the charge lasts, send fewer pulses, or fit cells that hold more.',
    worked: {
      on: '2026-05-01',
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/charge.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-02-02, interval: 12 months } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/charge.md, battery: { kind: 9 V alkaline, count: 1, fitted: 2026-02-02, interval: 6 months } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      const short = battery && shortened(battery)
      if (!short) continue
      const { charge, fitted, emptyOn, intervalDueOn } = short
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'interval'),
        message: `${controller.id}: its charge lasts ${daysText(charge.days)} as programmed, until ${emptyOn}; the interval alone says ${intervalDueOn}. ${shares(charge)}`,
        fix: `Write "interval: ${daysText(charge.days)}", or fit cells of more than ${neededMah(charge, fitted, intervalDueOn)} mAh.`,
        values: {
          days: charge.days,
          empty_on: emptyOn,
          interval_due_on: intervalDueOn,
          capacity_mah: charge.capacityMah,
          pulses_in_year: charge.pulsesInYear
        },
        related: controller.sheet ? [{ at: at(controller.sheet, 'drain'), note: 'what the sheet says is drawn' }] : []
      })
    }
  }
}

interface Short {
  readonly charge: ChargeLife
  readonly fitted: IsoDate
  readonly emptyOn: IsoDate
  readonly intervalDueOn: IsoDate
}

/** A set whose charge, and nothing before it, sets the day it is due. */
function shortened({ fitted, charge, dueOn, intervalDueOn }: BatteryPlan): Short | undefined {
  if (!fitted || !charge || charge.beyond || !intervalDueOn || !isPresent(dueOn)) return undefined
  const emptyOn = addDays(fitted, charge.days)
  return emptyOn === dueOn && emptyOn < intervalDueOn ? { charge, fitted, emptyOn, intervalDueOn } : undefined
}

/** "Of 210 mAh a year, standing draws 50 %, pulses 42 %, and 8 % is lost by itself." */
function shares({ inYearMah: { standing, pulses, lost } }: ChargeLife): string {
  const all = standing + pulses + lost
  const part = (amount: number) => `${Math.round((amount / all) * 100)} %`
  return `Of ${figures(all, 3)} mAh a year, ${part(standing)} is drawn all the time, ${part(pulses)} goes into pulses and ${part(lost)} is lost by itself.`
}

/** Capacity that would last the interval, in whole tens. */
function neededMah(charge: ChargeLife, fitted: IsoDate, until: IsoDate): number {
  return Math.ceil((charge.capacityMah * daysBetween(fitted, until)) / Math.max(charge.days, 1) / 10) * 10
}
