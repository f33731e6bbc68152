import type { PageContext } from '../binder/context.ts'
import { wordsOf } from '../words/languages.ts'
import type { AssessedSite } from './assess.ts'
import { withPhotosThere } from './photos.ts'
import { toolVersion } from './tool-version.ts'

/** What a page is made from; nothing for a site that could not be understood. */
export function contextOf(
  { site, plan, findings, sources }: AssessedSite,
  publicAddress: string,
  prints: PageContext['prints'] = []
): PageContext[] {
  if (!site || !plan) return []
  return [
    {
      site: withPhotosThere(site, sources),
      plan,
      findings,
      words: wordsOf(site.languages?.[0]),
      publicAddress,
      version: toolVersion(),
      prints
    }
  ]
}
