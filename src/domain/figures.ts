import { roundedText } from '../units/show.ts'

/** So many significant digits, no exponent, trailing zeros dropped: 6.27, 0.147, 128, 1380. Whole digits are never rounded away. */
export function figures(value: number, digits: number): string {
  if (value === 0) return '0'
  const magnitude = Math.floor(Math.log10(Math.abs(value)))
  return roundedText(value, Math.min(12, Math.max(0, digits - 1 - magnitude)))
}

/** "6.27 Ω": a figure of a working, with a space that does not break. */
export function measure(value: number, digits: number, unit: string): string {
  return `${figures(value, digits)}\u00a0${unit}`
}
