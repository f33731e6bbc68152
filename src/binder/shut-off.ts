import type { PublicSite } from '../model/public-site.ts'
import type { Words } from '../words/words.ts'

/** Where and how the water is shut off, one supply after the other. */
export function stopWords(site: PublicSite, { label }: Words): string {
  return (
    site.supplies
      .map(one => one.shutOff)
      .filter(Boolean)
      .join(' · ') || label.noShutOff
  )
}
