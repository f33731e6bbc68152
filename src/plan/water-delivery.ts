import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { CalculationInputs } from '../domain/calculation.ts'
import { deliveryMultiplier, deliveryOf } from '../domain/water/delivery.ts'
import { catchDepthM, catchRateMPerS, uniformity } from '../domain/water/uniformity.ts'
import type { CatchCans, Station } from '../model/site.ts'
import type { DeliveryPlan } from './water-plan.ts'

/**
 * What the need of a station is multiplied by. A test with cans goes before a uniformity that is only stated. Absent where an application
 * efficiency stands beside either, since each already stands for the other's loss, and where the cans tell nothing.
 */
export function stationDelivery({ efficiency, uniformity: stated, catchCans }: Station): Maybe<DeliveryPlan> {
  const cans = catchCans && uniformity(catchCans.catches.map(one => one.si))
  if (isAbsent(cans)) return cans
  const dulq = cans?.lowQuarter ?? stated?.si
  const delivery = deliveryOf(efficiency?.si, dulq)
  if (isAbsent(delivery)) return delivery
  const by = cans ? 'catch-cans' : delivery.by
  return { delivery, multiplier: deliveryMultiplier(delivery), by }
}

/** Rate that the cans caught, m/s; undefined where there was no test that tells it. */
export function measuredRateMPerS({ catchCans }: Station): number | undefined {
  if (!catchCans || !isTimed(catchCans)) return undefined
  const found = uniformity(catchCans.catches.map(one => one.si))
  if (isAbsent(found)) return undefined
  const { throat, time } = catchCans
  const depthM = isVolumes(catchCans) ? catchDepthM(found.mean, throat?.si ?? 0) : found.mean
  return time && Number.isFinite(depthM) ? catchRateMPerS(depthM, time.si) : undefined
}

/** The time is known, and the opening of the cans where they were read as volumes. */
function isTimed(cans: CatchCans): boolean {
  return cans.time !== undefined && (!isVolumes(cans) || cans.throat !== undefined)
}

const isVolumes = ({ catches }: CatchCans): boolean => catches[0]?.dimension === 'volume'

/** What the card of uniformity takes, as a person would type it. */
export function catchCanInputs({ catchCans }: Station): Maybe<CalculationInputs> {
  if (!catchCans) return absent('there was no test with cans')
  const { catches, time, throat } = catchCans
  return {
    catches: `${catches.map(one => one.value).join(' ')} ${catches[0]?.unit ?? ''}`,
    time: isTimed(catchCans) ? time?.si : undefined,
    throat: isTimed(catchCans) && isVolumes(catchCans) ? throat?.si : undefined
  }
}
