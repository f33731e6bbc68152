import { existsSync } from 'node:fs'
import type { IsoDate } from '../units/date.ts'
import { refuseUnknownSites } from './assess.ts'
import { readKeptFleet } from './kept-fleet.ts'
import type { KeptFleet } from './kept-fleet.ts'
import { printsThere } from './prints-there.ts'
import { shardOf } from './shard.ts'
import type { Shard } from './shard.ts'
import { cacheFolder, readKept, writeKept } from './site-cache.ts'
import type { SiteDigest } from './site-digest.ts'
import { SITES_A_TASK, tasksOf } from './work-order.ts'
import { workThrough } from './work-pool.ts'

export interface DigestWish {
  readonly sites: string
  /** Output of the builds, beside which they keep what they found out. */
  readonly out: string
  readonly on: IsoDate
  readonly only?: readonly string[]
  readonly shard?: Shard
  readonly onSite?: (done: number, of: number) => void
}

export interface DigestedFleet {
  readonly fleet: KeptFleet
  /** Of the sites that are asked for, in order. */
  readonly digests: readonly SiteDigest[]
}

/** What is known of each site without its pages; one is looked at again only where something that shapes it changed since the last build or check. */
export async function digestFleet(wish: DigestWish): Promise<DigestedFleet> {
  const { on, out, only = [], shard } = wish
  const fleet = readKeptFleet(wish.sites, on, site => printsThere(site, out), { only })
  refuseUnknownSites(fleet.sources, only)
  const named = fleet.units.filter(one => only.length === 0 || only.includes(one.sources.id))
  const units = shard ? shardOf(named, shard) : named
  const cache = cacheFolder(out)
  const digests = new Map<string, SiteDigest>()
  for (const { sources, key } of units) {
    const kept = readKept(cache, sources.id, key)
    if (kept) digests.set(sources.id, kept.digest)
  }
  const open = units.filter(one => !digests.has(one.sources.id))
  await workThrough(
    { common: fleet.common },
    tasksOf(open, SITES_A_TASK).map(digest => ({ digest })),
    ({ sites = [] }) => {
      for (const { digest } of sites) digests.set(digest.id, digest)
      wish.onSite?.(digests.size, units.length)
    }
  )
  // Only where a build keeps things too: a look at a folder leaves nothing behind.
  if (existsSync(cache))
    for (const { sources, key } of open) {
      const digest = digests.get(sources.id)
      if (digest) writeKept(cache, sources.id, { key, digest })
    }
  return { fleet, digests: units.flatMap(one => digests.get(one.sources.id) ?? []) }
}
