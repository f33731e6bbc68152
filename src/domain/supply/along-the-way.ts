import { pipeHeadLossM, pipeLossPa, pipeVelocityMPerS, PA_PER_M_OF_WATER } from './pipe-loss.ts'

/** What the water passes on its way to the devices, in its order. */
export type WayPart =
  | { readonly kind: 'loss'; readonly name: string; readonly lossPa: number }
  /** Lets no more through than it is set to. */
  | { readonly kind: 'regulator'; readonly name: string; readonly mostPa: number }
  | WayPipe

export interface WayPipe {
  readonly kind: 'pipe'
  readonly name: string
  readonly flowM3s: number
  readonly insideM: number
  readonly lengthM: number
  /** How much higher it ends than it starts; below zero where it falls. */
  readonly riseM: number
  readonly roughness: number
}

/** One part, with what it takes of the pressure. */
export interface PassedPart {
  readonly part: WayPart
  /** Friction, a stated loss, or what a regulator holds back. */
  readonly lossPa: number
  /** Taken by height; below zero where the pipe falls and gives some back. */
  readonly liftPa: number
  /** In a pipe. */
  readonly velocityMPerS?: number
  /** Left behind it. May be below zero, and then no such flow runs. */
  readonly leftPa: number
}

/**
 * The pressure along the way: each pipe takes what friction and height take (Hazen-Williams; 9806.65 Pa for a meter of water), a fitting
 * what is stated for it, a regulator what is over its setting. Start less all parts is what is left. Heights of speed are left out: 5 ft/s is 0.17 psi.
 */
export function alongTheWay(startPa: number, parts: readonly WayPart[]): readonly PassedPart[] {
  let leftPa = startPa
  return parts.map(part => {
    const taken = takenBy(part, leftPa)
    leftPa -= taken.lossPa + taken.liftPa
    return { part, ...taken, leftPa }
  })
}

export const leftAtEndPa = (startPa: number, parts: readonly WayPart[]): number =>
  alongTheWay(startPa, parts).at(-1)?.leftPa ?? startPa

function takenBy(part: WayPart, beforePa: number): Pick<PassedPart, 'lossPa' | 'liftPa' | 'velocityMPerS'> {
  switch (part.kind) {
    case 'loss':
      return { lossPa: part.lossPa, liftPa: 0 }
    case 'regulator':
      return { lossPa: Math.max(0, beforePa - part.mostPa), liftPa: 0 }
    case 'pipe':
      return {
        lossPa: pipeLossPa(pipeHeadLossM(part.flowM3s, part.insideM, part.lengthM, part.roughness)),
        liftPa: part.riseM * PA_PER_M_OF_WATER,
        velocityMPerS: pipeVelocityMPerS(part.flowM3s, part.insideM)
      }
  }
}
