import type { FleetCounts } from '../binder/fleet-counts.ts'
import { totalCounts } from '../binder/fleet-counts.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import type { IsoDate } from '../units/date.ts'
import { digestFleet } from './digest-fleet.ts'
import type { DigestWish } from './digest-fleet.ts'

export interface CheckedFleet {
  readonly on: IsoDate
  readonly sites: readonly { readonly id: string; readonly findings: readonly Finding[]; readonly isRead: boolean }[]
  readonly counts: FleetCounts
  /** In the one order, those of the register among them. */
  readonly findings: readonly Finding[]
}

/** Checks a fleet; a site is looked at again only where something that shapes it changed since the last build or check. */
export async function checkFleet(wish: DigestWish): Promise<CheckedFleet> {
  const { on, shard } = wish
  const { fleet, digests } = await digestFleet(wish)
  const general = shard && shard.index > 1 ? [] : fleet.general
  return {
    on,
    sites: digests.map(({ id, findings, built }) => ({ id, findings, isRead: built !== undefined })),
    counts: totalCounts(digests.flatMap(one => (one.built ? [one.built.summary.counts] : []))),
    findings: sortFindings([...general, ...digests.flatMap(one => one.findings)])
  }
}
