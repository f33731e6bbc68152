import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Worked } from '../domain/calculation.ts'
import { measure } from '../domain/figures.ts'
import { capacitorPulseMah, directPulseMah } from '../domain/power/pulse-charge.ts'
import type { SheetPulse } from '../model/power.ts'
import { BOOSTER_EFFICIENCY } from '../reference/batteries.ts'

const MAH_PER_COULOMB = 1 / 3.6

/** What one pulse takes from the cells, mAh, by the first form in which the sheet states it. `setVolt` is the nominal voltage of the set. */
export function sheetPulseMah(pulse: SheetPulse | undefined, setVolt: number | undefined): Maybe<Worked<number>> {
  if (!pulse) return absent('the sheet does not say what a pulse takes')
  const { charge, energy, current, time, capacitor, volts, efficiency } = pulse
  if (charge) return worked(charge.si * MAH_PER_COULOMB, `a pulse takes ${measure(charge.value, 4, charge.unit)}`)
  if (current && time)
    return worked(
      directPulseMah(current.si, time.si),
      `a pulse: ${measure(current.value, 4, current.unit)} for ${measure(time.value, 4, time.unit)}`
    )
  if (setVolt === undefined) return absent('the volts of the set are not known')
  if (energy)
    return worked(
      (energy.si / setVolt) * MAH_PER_COULOMB,
      `a pulse: ${measure(energy.value, 4, energy.unit)} at ${measure(setVolt, 3, 'V')}`
    )
  if (capacitor && volts) {
    const share = efficiency?.si ?? BOOSTER_EFFICIENCY
    return worked(
      capacitorPulseMah(capacitor.si, volts.si, share, setVolt),
      `a pulse: ${measure(capacitor.value, 4, capacitor.unit)} filled to ${measure(volts.value, 3, volts.unit)} from ${measure(setVolt, 3, 'V')} at ${measure(share * 100, 3, '%')}`
    )
  }
  return absent('the sheet says only a part of what a pulse takes')
}

const worked = (mah: number, words: string): Worked<number> => ({
  value: mah,
  steps: [`${words}: ${measure(mah, 4, 'mAh')}`]
})
