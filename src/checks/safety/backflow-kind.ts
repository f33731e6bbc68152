import type { Backflow } from '../../model/site.ts'

/** An air gap and a reduced-pressure assembly are what codes accept for high hazard; a double check is not. Common practice, no source. */
const HIGH_HAZARD = /reduced.?pressure|\bRPZ?A?\b|air.?gap|break.?tank/iu

export function isForHighHazard({ kind, reason }: Backflow): boolean {
  return HIGH_HAZARD.test(`${kind} ${reason ?? ''}`)
}
