import { sortedBy } from '../base/collections.ts'
import type { Site } from '../model/site.ts'
import type { Words } from '../words/words.ts'
import type { Block, IndexBlock, Section } from './blocks.ts'
import { textOf } from './block-text.ts'
import { masterValvesOf } from './master-valves.ts'

/** Places of one name in the index; more say nothing. */
export const PLACES_MOST = 6

/**
 * Where each box, controller, zone, supply, sensor and spare part of a site is told of, by the heading it stands under; a print leads on to
 * the row or line.
 */
export function indexBlock(site: Site, sections: readonly Section[], words: Words): IndexBlock {
  const passages = sections.flatMap(passagesOf)
  const entries = namesOf(site, words).flatMap(({ name, kind }) => {
    const told = passages.filter(({ text }) => isNamedIn(text, name))
    const targets = [...new Set(told.map(({ anchor }) => anchor))]
    return targets.length === 0 ? [] : [{ name, kind, targets: targets.slice(0, PLACES_MOST) }]
  })
  return { kind: 'index', entries }
}

interface Named {
  readonly name: string
  readonly kind: string
}

function namesOf(site: Site, words: Words): Named[] {
  const w = words.checklists.kinds
  const zones = new Set(site.stations.filter(({ id, zone }) => zone !== id).map(({ zone }) => zone))
  const named = [
    ...site.boxes.map(({ id }) => ({ name: id, kind: w.box })),
    ...site.controllers.map(({ id }) => ({ name: id, kind: w.controller })),
    ...site.stations.map(({ id }) => ({ name: id, kind: w.station })),
    ...masterValvesOf(site.controllers, words).map(({ id }) => ({ name: id, kind: w.masterValve })),
    ...[...zones].map(name => ({ name, kind: w.zone })),
    ...site.supplies.map(({ id }) => ({ name: id, kind: w.supply })),
    ...site.sensors.map(({ id }) => ({ name: id, kind: w.sensor })),
    ...(site.closeout?.spares ?? []).map(({ item }) => ({ name: item, kind: w.part }))
  ]
  return sortedBy(named, ({ name }) => name.replace(/\d+/gu, digits => digits.padStart(6, '0')))
}

interface Passage {
  readonly anchor: string
  readonly text: string
}

/** What stands under each heading of a section. */
function passagesOf({ id, blocks }: Section): Passage[] {
  let anchor = id
  return blocks.map((block: Block) => {
    if (block.kind === 'heading') anchor = block.id
    return { anchor, text: textOf(block) }
  })
}

/** A letter, a figure or a mark that carries a name on: "K1" is not named in "K12" or "K1-B". */
export const GOES_ON = /[\p{L}\p{N}/-]/u

/** True where a name stands in a text as a word of its own. */
function isNamedIn(text: string, name: string): boolean {
  // Nothing would be found again and again, at the end of the text.
  if (name === '') return false
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
    if (!GOES_ON.test(text[at - 1] ?? '') && !GOES_ON.test(text[at + name.length] ?? '')) return true
  }
  return false
}
