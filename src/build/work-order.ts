import { join } from 'node:path'
import { outputPlace, placeOutput } from './place-output.ts'
import { findLeaksAt } from './privacy-gate.ts'
import type { Leak, PrivateWordOf } from './privacy-gate.ts'
import type { SiteDigest } from './site-digest.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'
import { digestSite, makeSites } from './site-work.ts'

/** What holds for every task of a run. */
export interface WorkOrder {
  /** Absent where no site is made. */
  readonly common?: SharedWork
  /** Last output and the one that is put together; absent where sites are only checked. */
  readonly folders?: { readonly last: string; readonly next: string }
  readonly words?: readonly PrivateWordOf[]
}

export type WorkTask =
  | { readonly make: readonly SiteUnit[] }
  | { readonly digest: readonly SiteUnit[] }
  /** Paths of public files to be looked through. */
  | { readonly look: readonly string[] }

export interface DoneSite {
  readonly digest: SiteDigest
  readonly files: readonly { readonly path: string; readonly fate: 'changed' | 'unchanged' }[]
}

export interface WorkAnswer {
  readonly sites?: readonly DoneSite[]
  readonly leaks?: readonly Leak[]
}

/** Sites that are made together: Eleventy is started once for them, and their pages are in memory together. */
export const SITES_A_TASK = 16
export const FILES_A_TASK = 400

export async function doTask({ common, folders, words = [] }: WorkOrder, task: WorkTask): Promise<WorkAnswer> {
  if ('look' in task && folders) return { leaks: await findLeaksAt(folders.next, task.look, words) }
  if (!common) throw new Error('sites need to know the day')
  if ('digest' in task) return { sites: task.digest.map(unit => ({ digest: digestSite(unit, common), files: [] })) }
  if (!folders || 'look' in task) throw new Error('pages need a folder')
  const made = await makeSites(task.make, common)
  const placeOf = outputPlace(folders.next)
  const sites = made.map(({ digest, files }) => ({
    digest,
    files: files.map(({ path, content }) => {
      const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content
      return { path, fate: placeOutput(join(folders.last, path), placeOf(path), bytes) }
    })
  }))
  return { sites }
}

export function tasksOf<T>(items: readonly T[], each: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / each) }, (_, n) => items.slice(n * each, (n + 1) * each))
}
