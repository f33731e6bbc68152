import {
  CLOUDY_SHARE,
  FULL_SUN_W_PER_M2,
  GROUND_SHARE,
  SOLAR_MARGIN,
  SUNSHINE_SHARE
} from '../../reference/solar-panel.ts'
import { solarDay } from '../climate/solar-geometry.ts'
import type { When } from '../climate/when.ts'
import { diffuseShare, onSurfaceMj } from './tilted-radiation.ts'

/** What is known of a month's light, the surest first. Where nothing is, every day counts as overcast, which is the safe side. */
export type MonthLight =
  | { readonly by: 'measured'; readonly levelMj: number }
  | { readonly by: 'sunshine'; readonly hours: number }
  | { readonly by: 'overcast' }

export interface PanelPlace {
  /** From level; a panel that faces another way than the noon sun gets the light of the sky alone. */
  readonly tiltDeg: number
  readonly facesSun: boolean
  /** Part of the light that shade takes, 0 to 1. */
  readonly shadeLost: number
}

export interface PanelLight {
  readonly aboveMj: number
  readonly levelMj: number
  /** On the panel, shade taken off. */
  readonly panelMj: number
  /** Hours of full sun that hold as much. */
  readonly fullSunH: number
}

/** Light on a panel on a mean day of a month, MJ/m². At 54.97° N in December, flat and overcast: 1.17 of 4.69. */
export function panelLight(
  when: Pick<When, 'latitudeDeg' | 'dayOfYear'>,
  light: MonthLight,
  place: PanelPlace
): PanelLight {
  const { extraterrestrialMj, daylightH, sunsetAngleRad } = solarDay(when.latitudeDeg, when.dayOfYear)
  if (!(extraterrestrialMj > 0)) return { aboveMj: 0, levelMj: 0, panelMj: 0, fullSunH: 0 }
  const levelMj = levelRadiationMj(light, extraterrestrialMj, daylightH)
  // Under a closed cover of cloud all light is that of the sky.
  const diffuse = light.by === 'overcast' ? 1 : Math.min(1, diffuseShare(levelMj / extraterrestrialMj, sunsetAngleRad))
  const surface = { ...when, tiltDeg: place.tiltDeg, groundShare: GROUND_SHARE }
  const panelMj = onSurfaceMj(levelMj, surface, diffuse, place.facesSun || place.tiltDeg === 0) * (1 - place.shadeLost)
  return { aboveMj: extraterrestrialMj, levelMj, panelMj, fullSunH: fullSunHours(panelMj) }
}

function levelRadiationMj(light: MonthLight, aboveMj: number, daylightH: number): number {
  if (light.by === 'measured') return light.levelMj
  const sunny = light.by === 'sunshine' ? Math.min(1, light.hours / daylightH) : 0
  return (CLOUDY_SHARE + SUNSHINE_SHARE * sunny) * aboveMj // FAO paper 56 (1998), eq. 35
}

/** 3.6 MJ/m² are as much as one hour of 1,000 W/m². */
export const fullSunHours = (mj: number): number => (mj * 1e6) / FULL_SUN_W_PER_M2 / 3600

export interface PanelOutput {
  /** Watts in full sun, with the volts of the cell that it fills. */
  readonly watt?: number
  readonly cellVolt?: number
  /** Or the current into the cell in full sun. */
  readonly peakA?: number
  readonly derating: number
}

/** Charge into the cell in a day, mAh; undefined where neither the current nor watts and volts are known. */
export function panelMah(fullSunH: number, { watt, cellVolt, peakA, derating }: PanelOutput): number | undefined {
  const ampere = peakA ?? (watt !== undefined && cellVolt !== undefined ? watt / cellVolt : undefined)
  return ampere === undefined ? undefined : ampere * 1000 * fullSunH * derating
}

export type SolarVerdict = 'enough' | 'in doubt' | 'too little'

/** Too little below what is drawn, in doubt below twice as much. */
export function solarVerdict(yieldMah: number, drawnMah: number): SolarVerdict {
  if (yieldMah < drawnMah) return 'too little'
  return yieldMah < SOLAR_MARGIN * drawnMah ? 'in doubt' : 'enough'
}
