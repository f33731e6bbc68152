import { absent, isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Worked } from '../domain/calculation.ts'
import { monthWhen } from '../domain/climate/when.ts'
import { measure } from '../domain/figures.ts'
import { panelLight, panelMah, solarVerdict } from '../domain/power/solar-month.ts'
import type { MonthLight, PanelOutput, PanelPlace } from '../domain/power/solar-month.ts'
import { solarSteps } from '../domain/power/solar-yield.ts'
import type { Climate, Controller, Site } from '../model/site.ts'
import { USABLE_SHARE } from '../reference/batteries.ts'
import { PANEL_DERATING } from '../reference/solar-panel.ts'
import { MONTHS } from '../units/date.ts'
import { COMMON_MONTH_DAYS } from './month-days.ts'
import type { SolarMonth, SolarPlan } from './power-plan.ts'
import { sheetPulseMah } from './sheet-charge.ts'

/** Yield of a panel against what is drawn, month by month. Undefined where the controller has no panel. */
export function planSolar(
  site: Site,
  controller: Controller,
  pulses: readonly number[]
): Worked<SolarPlan> | undefined {
  if (controller.power !== 'solar') return undefined
  const place = placeOf(controller)
  const drawn = drawnByMonth(controller, pulses)
  const months = monthsOf(site, controller, place, drawn)
  const capacityMah = (controller.sheet?.solar?.battery?.capacity?.si ?? NaN) / 3.6
  const stated = controller.sheet?.solar?.daysWithoutSun
  const autonomyDays = autonomy(capacityMah, drawn)
  const value: SolarPlan = {
    months: isAbsent(months) ? months : months.value,
    autonomyDays,
    ...(stated === undefined ? {} : { statedDays: stated }),
    tiltDeg: place.tiltDeg,
    shadeLost: place.shadeLost,
    shadeStated: controller.panel?.shade !== undefined
  }
  const held = isAbsent(autonomyDays)
    ? []
    : [
        `without light: ${measure(capacityMah, 4, 'mAh')} × ${USABLE_SHARE * 100} % lasts ${measure(autonomyDays, 3, 'days')} in the month that draws most`
      ]
  return { value, steps: [...(isAbsent(months) ? [] : months.steps), ...held] }
}

function placeOf({ panel }: Controller): PanelPlace {
  return {
    tiltDeg: panel?.tilt?.si ?? 0,
    facesSun: panel?.faces !== 'another way',
    shadeLost: panel?.shade?.lost ?? 0
  }
}

/** mAh a day in each month. Absent unless both what is drawn all the time and what a pulse takes are stated. */
function drawnByMonth({ sheet }: Controller, pulses: readonly number[]): Maybe<readonly number[]> {
  if (!sheet?.drain) return absent('the sheet does not say what is drawn all the time')
  const pulse = sheetPulseMah(sheet.pulse, sheet.solar?.battery?.volts?.si)
  if (isAbsent(pulse)) return pulse
  const standing = sheet.drain.si * 24_000
  return pulses.map((count, index) => standing + (count / (COMMON_MONTH_DAYS[index] ?? 30)) * pulse.value)
}

function monthsOf(
  site: Site,
  { sheet }: Controller,
  place: PanelPlace,
  drawn: Maybe<readonly number[]>
): Maybe<Worked<readonly SolarMonth[]>> {
  const latitude = site.location?.latitude
  if (latitude === undefined) return absent('the latitude is not stated')
  if (isAbsent(drawn)) return drawn
  const output = outputOf(sheet?.solar)
  if (panelMah(1, output) === undefined) return absent('the sheet does not say what the panel gives')
  const rows = drawn.map((drawnMah, index) => {
    const facts = { when: monthWhen(latitude, index + 1), light: lightOf(site.climate, index), place, output }
    const { panelMj, fullSunH } = panelLight(facts.when, facts.light, place)
    const yieldMah = panelMah(fullSunH, output) ?? 0
    const verdict = solarVerdict(yieldMah, drawnMah)
    const month: SolarMonth = { month: index + 1, by: facts.light.by, panelMj, yieldMah, drawnMah, verdict }
    return { month, facts }
  })
  const worst = rows.reduce((least, one) => (ratio(one.month) < ratio(least.month) ? one : least))
  return {
    value: rows.map(({ month }) => month),
    steps: [`the worst month is ${MONTHS[worst.month.month - 1]}`, ...solarSteps(worst.facts, worst.month.drawnMah)]
  }
}

const ratio = ({ yieldMah, drawnMah }: SolarMonth): number => (drawnMah > 0 ? yieldMah / drawnMah : Infinity)

function outputOf(solar: NonNullable<Controller['sheet']>['solar']): PanelOutput {
  return {
    derating: solar?.derating?.si ?? PANEL_DERATING,
    ...(solar?.panel ? { watt: solar.panel.si } : {}),
    ...(solar?.battery?.volts ? { cellVolt: solar.battery.volts.si } : {}),
    ...(solar?.peakCurrent ? { peakA: solar.peakCurrent.si } : {})
  }
}

/** W/m² over a day are as much as this in MJ/m². */
const MJ_PER_DAY = 0.0864

function lightOf(climate: Climate | undefined, index: number): MonthLight {
  const month = MONTHS[index]
  const measured = month && climate?.solarRadiation?.[month]
  if (measured) return { by: 'measured', levelMj: measured.si * MJ_PER_DAY }
  const sunshine = month && climate?.sunshine?.[month]
  return sunshine ? { by: 'sunshine', hours: sunshine.si / 3600 } : { by: 'overcast' }
}

function autonomy(capacityMah: number, drawn: Maybe<readonly number[]>): Maybe<number> {
  if (isAbsent(drawn)) return drawn
  if (!(capacityMah > 0)) return absent('the sheet does not say what the cell behind the panel holds')
  const most = Math.max(...drawn)
  return isPresent(drawn) && most > 0 ? (capacityMah * USABLE_SHARE) / most : absent('nothing is drawn')
}
