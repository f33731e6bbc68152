import { sortedBy } from '../base/collections.ts'
import type { Site } from '../model/site.ts'
import type { Words } from '../words/words.ts'
import type { Block, IndexBlock, Section } from './blocks.ts'
import { textOf } from './block-text.ts'

/** Places of one name in the index; more say nothing. */
const PLACES_MOST = 6

/** Where each box, controller, zone, supply, sensor and spare part of a site is told of, by the heading it stands under. */
export function indexBlock(site: Site, sections: readonly Section[], words: Words): IndexBlock {
  const passages = sections.flatMap(passagesOf)
  const entries = namesOf(site, words).flatMap(({ name, kind }) => {
    const whole = new RegExp(`(?<![\\p{L}\\p{N}/-])${escaped(name)}(?![\\p{L}\\p{N}/-])`, 'u')
    const targets = [...new Set(passages.filter(({ text }) => text.includes(name) && whole.test(text)).map(({ anchor }) => anchor))]
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

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`)
