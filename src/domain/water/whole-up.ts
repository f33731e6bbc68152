/** Room for the last bits of a conversion, so that 24 min handed over in seconds is not taken for a little more than 24. */
const ROUNDING = 1e-9

/** An amount of zero or more, up to the next whole step: 23.1 min in steps of a minute is 24, and 24 stays 24. */
export function wholeUp(value: number, step: number): number {
  return Math.max(0, Math.ceil(value / step - ROUNDING)) * step
}

/** Down to the last whole step. */
export function wholeDown(value: number, step: number): number {
  return Math.floor(value / step + ROUNDING) * step
}
