/**
 * American wire gauge: 36 AWG is 0.0050 in, 4/0 is 0.4600 in, 39 equal steps between them (ASTM B258, formula). No temperature: geometry.
 * Printed tables carry four significant figures; the formula is exact, so a printed diameter may differ by half its last digit.
 */
export const AWG = {
  baseGauge: 36,
  baseDiameterM: 0.000127,
  ratio: 92,
  steps: 39,
  /** 4/0 counts as -3. */
  thickest: -3,
  thinnest: 40,
  printedFigures: 4
} as const
