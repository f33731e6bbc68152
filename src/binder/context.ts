import type { AttachedFile } from './attachments.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { makePublic } from '../model/public-site.ts'
import type { PublicSite } from '../model/public-site.ts'
import type { Site } from '../model/site.ts'
import type { Plan } from '../plan/plan.ts'
import type { Words } from '../words/words.ts'

/** All that a page is made from. */
export interface PageContext {
  readonly site: Site
  readonly plan: Plan
  readonly findings: readonly Finding[]
  readonly words: Words
  /** "HTTPS://EXAMPLE.ORG", upper case, no slash at the end. */
  readonly publicAddress: string
  readonly version: string
  /** Files that are bound in, by the name that the site file gives; undefined where nothing is printed. */
  readonly attachments?: ReadonlyMap<string, AttachedFile>
  /** Prints that stand, or will, beside the pages, so that no page links to one that was never made. */
  readonly prints: readonly ('binder' | 'labels')[]
}

/** What a page that anybody can open, and a label that hangs under a lid, are made from. */
export interface PublicContext extends PageContext {
  readonly site: PublicSite
}

export function publicContext(context: PageContext): PublicContext {
  return { ...context, site: makePublic(context.site) }
}

export function revisionOf({ site, words }: PageContext): string {
  return site.revision ?? words.binder.notSupplied
}
