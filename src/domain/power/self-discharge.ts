import { SELF_DISCHARGE_BASE_C, SELF_DISCHARGE_DOUBLES_PER_C } from '../../reference/batteries.ts'

/**
 * Yearly self-discharge at another temperature, as a fraction: doubles for every 10 °C above 25 °C and halves below (common practice, no
 * source; published tables differ widely above 35 °C). 2 % at 25 °C is 4 % at 35 °C.
 */
export function selfDischargeAt(yearlyAt25: number, temperatureC: number): number {
  return yearlyAt25 * 2 ** ((temperatureC - SELF_DISCHARGE_BASE_C) / SELF_DISCHARGE_DOUBLES_PER_C)
}
