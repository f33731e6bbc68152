import { needleIndex } from '../domain/privacy/needle-index.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { Site } from '../model/site.ts'

/** A word shorter than this finds everything. */
const LEAST_LETTERS = 2

/**
 * The words by which a site is found, each once, small, in order. Taken from what describes the site, its boxes and zones, from its visits and
 * findings; a text in which a private word stands is left out whole.
 */
export function searchText(site: Site, findings: readonly Finding[]): string {
  const index = needleIndex(site.privateWords.map(word => word.text))
  const isOpen = (text: string): boolean => index.wordsIn(text, () => true).length === 0
  const words = textsOf(site, findings)
    .filter(text => text !== undefined && isOpen(text))
    .flatMap(text => (text ?? '').toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}./-]*/gu) ?? [])
  return [...new Set(words.filter(word => word.length >= LEAST_LETTERS))].sort().join(' ')
}

function textsOf(site: Site, findings: readonly Finding[]): (string | undefined)[] {
  return [
    site.id,
    site.title,
    site.location?.address,
    ...site.boxes.flatMap(box => [box.id, box.tag, box.where, ...box.ties]),
    ...site.controllers.flatMap(one => [one.id, one.where, one.serial]),
    ...site.stations.flatMap(one => [one.id, one.zone, one.waters]),
    ...site.visits.flatMap(visit => [...visit.found, ...visit.done, ...visit.open]),
    ...findings.flatMap(one => [one.code, one.subject, one.message])
  ]
}
