import type { Stage } from './output-stage.ts'
import { isIntact, keptFile, readKept, writeKept } from './site-cache.ts'
import type { KeptSite } from './site-cache.ts'
import type { SiteDigest } from './site-digest.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'
import { SITES_A_TASK, tasksOf } from './work-order.ts'
import type { DoneSite } from './work-order.ts'
import { workThrough } from './work-pool.ts'

export interface UnitsWish {
  readonly units: readonly SiteUnit[]
  /** Sites whose pages are made; of the others only what the fleet's pages tell. */
  readonly asked: ReadonlySet<string>
  readonly common: SharedWork
  readonly cache: string
  readonly onSite?: (done: number, of: number) => void
}

export interface MadeUnits {
  /** In the order of the units. */
  readonly digests: readonly SiteDigest[]
  /** Made anew, since something that shapes them changed. */
  readonly made: readonly string[]
  /** Taken over as they are. */
  readonly same: readonly string[]
  /** Public files that stand as the last build left and looked through them. */
  readonly known: ReadonlySet<string>
  /** Keeps what was made for the next build; called once the new output stands in its place. */
  readonly keep: (out: string) => void
}

/** Every site of a build into the stage: carried over where nothing that shapes it changed, else made. */
export async function makeUnits(wish: UnitsWish, stage: Stage): Promise<MadeUnits> {
  const { units, asked, cache } = wish
  const last = stage.lastPath('')
  const kept = new Map<string, KeptSite>()
  const known = new Set<string>()
  for (const { key, sources } of units) {
    const found = readKept(cache, sources.id, key)
    if (!found) continue
    if (!asked.has(sources.id)) kept.set(sources.id, found)
    else if (found.files && isIntact(last, found.files)) {
      kept.set(sources.id, found)
      for (const { path } of found.files) {
        stage.repeat(path)
        known.add(path)
      }
    }
  }
  const open = units.filter(one => !kept.has(one.sources.id))
  const done = await makeOpen(open, wish, stage)
  for (const one of done.values()) for (const { path, fate } of one.files) stage.note(path, fate)
  // Without their units, which hold all texts of the sites.
  const keys = open.map(({ key, sources: { id } }) => ({ key, id })).filter(({ id }) => asked.has(id))
  const keep = (out: string): void => {
    for (const { key, id } of keys) {
      const one = done.get(id)
      if (!one?.digest.built) continue
      writeKept(cache, id, { key, digest: one.digest, files: one.files.map(({ path }) => keptFile(out, path)) })
    }
  }
  return {
    digests: units.flatMap(({ sources: { id } }) => kept.get(id)?.digest ?? done.get(id)?.digest ?? []),
    made: open.map(one => one.sources.id).filter(id => asked.has(id)),
    same: units.map(one => one.sources.id).filter(id => asked.has(id) && kept.has(id)),
    known,
    keep
  }
}

async function makeOpen(
  open: readonly SiteUnit[],
  { asked, common, onSite, units }: UnitsWish,
  stage: Stage
): Promise<Map<string, DoneSite>> {
  const done = new Map<string, DoneSite>()
  const isAsked = (one: SiteUnit): boolean => asked.has(one.sources.id)
  const tasks = [
    ...tasksOf(open.filter(isAsked), SITES_A_TASK).map(make => ({ make })),
    ...tasksOf(
      open.filter(one => !isAsked(one)),
      SITES_A_TASK
    ).map(digest => ({ digest }))
  ]
  const before = units.length - open.length
  await workThrough({ common, folders: { last: stage.lastPath(''), next: stage.folder } }, tasks, ({ sites = [] }) => {
    for (const one of sites) done.set(one.digest.id, one)
    onSite?.(before + done.size, units.length)
  })
  return done
}
