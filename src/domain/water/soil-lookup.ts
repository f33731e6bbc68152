import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { SLOPE_BANDS, SOIL_INTAKES, SOIL_WATERS } from '../../reference/soil.ts'
import { atMost } from '../within.ts'

const M_PER_IN = 0.0254
const S_PER_H = 3600
const IN_PER_FT = 12

export interface IntakeFacts {
  readonly intakeMPerS: number
  readonly surfaceM: number
  readonly words: string
}

/** Intake and surface storage of a texture on a slope (rise over run). A slope between two printed bands counts with the steeper. */
export function soilIntake(texture: string, slope: number): Maybe<IntakeFacts> {
  const row = SOIL_INTAKES.find(one => one.texture === plain(texture))
  if (!row)
    return absent(
      `no table has the intake of ${texture}: write it, or one of ${SOIL_INTAKES.map(one => one.texture).join(', ')}`
    )
  const band = SLOPE_BANDS.findIndex(({ upTo }) => atMost(Math.abs(slope), upTo))
  const surfaceIn = row.surfaceIn[band] as number
  return {
    intakeMPerS: (row.intakeInPerH * M_PER_IN) / S_PER_H,
    surfaceM: surfaceIn * M_PER_IN,
    words: `${row.texture}, slope ${SLOPE_BANDS[band]?.words}`
  }
}

/** Available water as m in a m of depth, at the low end of a texture's range, so that neither interval nor depth comes out too long. */
export function soilWater(texture: string): Maybe<number> {
  const row = SOIL_WATERS.find(({ textures }) => textures.includes(plain(texture)))
  return row
    ? row.leastInPerFt / IN_PER_FT
    : absent(`no table has the available water of ${texture}: write what it holds over the root depth`)
}

/** The same at the high end of the range: no soil of the texture is likely to hold more. */
export function soilWaterMost(texture: string): Maybe<number> {
  const row = SOIL_WATERS.find(({ textures }) => textures.includes(plain(texture)))
  return row ? row.mostInPerFt / IN_PER_FT : soilWater(texture)
}

/** Slope as written, "1 %", "4:1" (run to rise), "flat", as rise over run. */
export function slopeOf(text: string): Maybe<number> {
  const bare = text.trim().toLowerCase()
  if (bare === 'flat' || bare === 'level') return 0
  const percent = /^(\d+(?:\.\d+)?)\s*%$/u.exec(bare)
  if (percent) return Number(percent[1]) / 100
  const ratio = /^(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)$/u.exec(bare)
  if (!ratio || Number(ratio[1]) === 0)
    return absent(`“${text}” is not a slope; write it like “4 %” or “4:1”, run to rise`)
  return Number(ratio[2]) / Number(ratio[1])
}

const plain = (texture: string): string =>
  texture
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/gu, ' ')
