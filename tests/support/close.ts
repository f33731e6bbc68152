import { expect } from 'vitest'

/** Within so many percent of a published figure. A published zero must be met exactly. */
export function expectClose(actual: number, published: number, percent: number): void {
  const off = Math.abs(actual - published)
  expect(off, `${actual} against ${published}`).toBeLessThanOrEqual((Math.abs(published) * percent) / 100 + 1e-12)
}

/** Within so many units of the last printed digit: "0.1285" printed to 0.0001. */
export function expectPrinted(actual: number, printed: string, units: number): void {
  const places = /\.(\d+)$/u.exec(printed)?.[1]?.length ?? 0
  const off = Math.abs(actual - Number(printed))
  expect(off, `${actual} against ${printed}`).toBeLessThanOrEqual(units * 10 ** -places * 1.0001)
}
