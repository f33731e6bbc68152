import { fromSi } from '../../units/quantity.ts'
import type { Pit } from '../../model/site.ts'

export const depthFt = ({ depth }: Pit): number => fromSi(depth.si, 'ft', 'length')

/** Depths in a finding's values, to the hundredth of a foot that the rule's limits are stated in. */
export const feetValue = (pit: Pit): number => Number(depthFt(pit).toFixed(2))

export const PIT_DECIDES = 'A competent person on the site and the local safety authority decide.'
