import { isPresent } from '../../base/absent.ts'
import { sortedBy } from '../../base/collections.ts'
import type { CautionCard } from './card.ts'
import { acOnLatching } from './cautions/ac-on-latching.ts'
import { backflow } from './cautions/backflow.ts'
import { batteryDisposal } from './cautions/battery-disposal.ts'
import { batteryHandling } from './cautions/battery-handling.ts'
import { blowOut } from './cautions/blow-out.ts'
import { boxAnimals } from './cautions/box-animals.ts'
import { buriedUtilities } from './cautions/buried-utilities.ts'
import { cableCover } from './cautions/cable-cover.ts'
import { chemicalInjection } from './cautions/chemical-injection.ts'
import { confinedSpace } from './cautions/confined-space.ts'
import { fallEdge } from './cautions/fall-edge.ts'
import { heat } from './cautions/heat.ts'
import { lids } from './cautions/lids.ts'
import { lightning } from './cautions/lightning.ts'
import { mains } from './cautions/mains.ts'
import { polarity } from './cautions/polarity.ts'
import { reclaimedWater } from './cautions/reclaimed-water.ts'
import { storedPressure } from './cautions/stored-pressure.ts'
import { traffic } from './cautions/traffic.ts'
import { trench } from './cautions/trench.ts'
import { valveStaysOpen } from './cautions/valve-stays-open.ts'
import type { SafetyFacts } from './facts.ts'
import { SIGNALS } from './card.ts'

const REGISTER = [
  acOnLatching,
  backflow,
  batteryDisposal,
  batteryHandling,
  blowOut,
  boxAnimals,
  buriedUtilities,
  cableCover,
  chemicalInjection,
  confinedSpace,
  fallEdge,
  heat,
  lids,
  lightning,
  mains,
  polarity,
  reclaimedWater,
  storedPressure,
  traffic,
  trench,
  valveStaysOpen
] as const

export type CautionId = (typeof REGISTER)[number]['id']

/** Every caution, worst first: by signal word, then by rank. */
export const CAUTIONS: readonly CautionCard<CautionId>[] = sortedBy<CautionCard<CautionId>>(
  REGISTER,
  card => SIGNALS.indexOf(card.signal),
  card => card.rank
)

export function cautionCard(id: CautionId): CautionCard<CautionId> {
  const card = CAUTIONS.find(one => one.id === id)
  if (!card) throw new Error(`${id} is not a caution`)
  return card
}

/** A caution with the fact that called for it. */
export interface ChosenCaution {
  readonly id: CautionId
  readonly reason: string
}

/** The cautions that the facts call for, worst first. */
export function chooseCautions(facts: SafetyFacts): ChosenCaution[] {
  return CAUTIONS.flatMap(({ id, applies }) => {
    const reason = applies(facts)
    return isPresent(reason) ? [{ id, reason }] : []
  })
}
