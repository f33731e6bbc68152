import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { figures, measure } from '../figures.ts'
import { scheduleMultiplier } from './uniformity.ts'

/** How a zone's losses are told: by its application efficiency, by its uniformity, or not at all. Shares are fractions. */
export type Delivery =
  | { readonly by: 'efficiency'; readonly share: number }
  | { readonly by: 'dulq'; readonly share: number }
  | { readonly by: 'nothing' }

/** Absent where both are given, since each already stands for the other's loss, and where one is not more than 0 and at most 100 %. */
export function deliveryOf(efficiency: number | undefined, dulq: number | undefined): Maybe<Delivery> {
  if (efficiency !== undefined && dulq !== undefined)
    return absent('give an application efficiency or a distribution uniformity, not both')
  if (efficiency !== undefined) return within('efficiency', efficiency) ?? { by: 'efficiency', share: efficiency }
  if (dulq !== undefined) return within('dulq', dulq) ?? { by: 'dulq', share: dulq }
  return { by: 'nothing' }
}

/** What a need is multiplied by to have the depth to apply. */
export function deliveryMultiplier(delivery: Delivery): number {
  if (delivery.by === 'efficiency') return 1 / delivery.share
  if (delivery.by === 'dulq') return scheduleMultiplier(delivery.share)
  return 1
}

/** "application efficiency 70 %: 1 / 0.7 = 1.429". */
export function deliveryStep(delivery: Delivery): string {
  const multiplier = figures(deliveryMultiplier(delivery), 4)
  if (delivery.by === 'nothing') return 'no efficiency and no uniformity given: no loss is counted'
  const share = measure(delivery.share * 100, 3, '%')
  if (delivery.by === 'efficiency')
    return `application efficiency ${share}: 1 / ${figures(delivery.share, 3)} = ${multiplier}`
  return `lowest-quarter uniformity ${share}: 1 / (0.4 + 0.6 × ${figures(delivery.share, 3)}) = ${multiplier}`
}

function within(name: string, share: number) {
  return share > 0 && share <= 1 ? undefined : absent(`${name} must be more than 0 and at most 100 %`)
}
