import { AWG } from '../../reference/awg.ts'

/** Diameter of a gauge in meters; 1/0 counts as 0, 4/0 as -3. 12 AWG is 2.0525 mm (ASTM B258, formula). */
export function awgDiameterM(gauge: number): number {
  return AWG.baseDiameterM * AWG.ratio ** ((AWG.baseGauge - gauge) / AWG.steps)
}

/** 12 AWG is 3.3088 mm². */
export function awgAreaMm2(gauge: number): number {
  return circleAreaMm2(awgDiameterM(gauge) * 1000)
}

/** The gauge of a diameter, not rounded: 2.0525 mm is 12. Inverse of `awgDiameterM`. */
export function gaugeOfDiameter(diameterM: number): number {
  return AWG.baseGauge - (AWG.steps * Math.log(diameterM / AWG.baseDiameterM)) / Math.log(AWG.ratio)
}

export function circleAreaMm2(diameterMm: number): number {
  return (Math.PI / 4) * diameterMm ** 2
}

export function circleDiameterMm(areaMm2: number): number {
  return Math.sqrt((4 * areaMm2) / Math.PI)
}
