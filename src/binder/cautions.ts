import { cautionCard } from '../domain/safety/cautions.ts'
import type { CautionId, ChosenCaution } from '../domain/safety/cautions.ts'
import { editionsHere } from '../domain/safety/card.ts'
import type { Editions } from '../domain/safety/card.ts'
import { regionOf } from '../domain/safety/region.ts'
import { isRoadside } from '../domain/safety/roadside.ts'
import { waterOf } from '../domain/safety/water.ts'
import type { Site } from '../model/site.ts'
import type { CautionWords } from '../words/en-US/cautions.ts'
import type { BoxPage } from './pages.ts'
import type { CautionBlock, TableBlock } from './blocks.ts'
import { citeIn } from './cite.ts'
import { siteSteps } from './caution-steps.ts'

export { coverTable } from './cover-table.ts'

type BoxHazard = BoxPage['hazards'][number]

/** The chosen cautions as blocks, worst first, with the codes of the site's country and what the site itself states. */
export function cautionBlocks(site: Site, cautions: readonly ChosenCaution[], words: CautionWords): CautionBlock[] {
  return cautions.map(({ id }) => cautionBlock(site, id, words))
}

/** One caution, for the task it belongs to: the battery change, the blow-out, the valve opened by hand. */
export function cautionBlock(site: Site, id: CautionId, words: CautionWords): CautionBlock {
  const { signal, editions } = cautionCard(id)
  const { title, hazard, consequence, avoidance, local, deference } = words.texts[id]
  const region = regionOf(site.location?.country)
  const there = (region && local?.[region]) ?? local?.other ?? []
  return {
    kind: 'caution',
    signal,
    title,
    hazard,
    consequence,
    avoidance: [...siteSteps(site, id, words), ...there, ...avoidance],
    edition: editionLine(editions, site, words),
    deference: `${deference} ${words.closing}`
  }
}

/** Names the codes of the site's country; those of the United States, marked as an example, where it has none here. */
function editionLine(editions: Editions, site: Site, words: CautionWords): string {
  const { sources, example } = editionsHere(editions, regionOf(site.location?.country))
  const cited = sources.map(id => citeIn(id, words)).join('; ')
  return example ? words.editionExample(cited) : words.edition(cited)
}

/** Why each caution was chosen, for the reader who asks. */
export function cautionReasons(cautions: readonly ChosenCaution[], words: CautionWords): TableBlock {
  return {
    kind: 'table',
    caption: words.reasons.caption,
    columns: [{ label: words.reasons.caution }, { label: words.reasons.because }],
    rows: cautions.map(({ id, reason }) => [
      { text: `${words.signals[cautionCard(id).signal]}: ${words.texts[id].title}`, standing: 'stated' },
      { text: reason, standing: 'stated' }
    ]),
    notes: [words.reasons.graded(citeIn('ansi-z535-6', words))]
  }
}

/** How many lines of hazard a box page has room for. */
const MOST_LINES = 3

/** The worst lines for one box, worst first. What the box's own list notes is always among them. */
export function boxHazards(
  site: Site,
  boxId: string,
  cautions: readonly ChosenCaution[],
  words: CautionWords
): BoxHazard[] {
  const noted = site.boxes.find(box => box.id === boxId)?.hazards ?? []
  const lines = cautions
    .filter(({ id }) => isAtBox(site, boxId, id))
    .filter(({ id }) => noted.length === 0 || id !== 'box-animals')
    .map(({ id }) => hazardOf(id, words))
  if (noted.length === 0) return lines.slice(0, MOST_LINES)
  const own: BoxHazard = {
    signal: cautionCard('box-animals').signal,
    text: words.box.noted(noted.join(', ')),
    instead: words.texts['box-animals'].instead
  }
  const worse = lines.filter(line => line.signal === 'DANGER' || line.signal === 'WARNING').slice(0, MOST_LINES - 1)
  const rest = lines.filter(line => !worse.includes(line) && line.signal !== 'DANGER' && line.signal !== 'WARNING')
  return [...worse, own, ...rest].slice(0, MOST_LINES)
}

/** What can hurt at this box, in full; whatever else the site has by name, since a phone in the sun is no place for all of it. */
export function boxCautions(
  site: Site,
  boxId: string,
  cautions: readonly ChosenCaution[],
  words: CautionWords
): { readonly full: CautionBlock[]; readonly others: string[] } {
  const here = cautions.filter(({ id }) => isAtBox(site, boxId, id))
  const others = cautions.filter(one => !here.includes(one))
  return { full: cautionBlocks(site, here, words), others: others.map(({ id }) => words.texts[id].title) }
}

function isAtBox(site: Site, boxId: string, id: CautionId): boolean {
  return cautionCard(id).atBox && (id !== 'mains' || mainsAt(site, boxId))
}

function hazardOf(id: CautionId, words: CautionWords): BoxHazard {
  const { short, instead } = words.texts[id]
  return { signal: cautionCard(id).signal, text: short, instead }
}

function mainsAt({ controllers }: Site, boxId: string): boolean {
  return controllers.some(one => one.box === boxId && (one.power === 'adapter' || one.pumpStart === true))
}

/** What stands first on the label and the page of every box on a road, on a roof and on reclaimed water. */
export function hazardLine(site: Site, words: CautionWords): string | undefined {
  const { road, roof, reclaimed } = words.hazardLine
  const lines = [
    ...(isRoadside({ place: site.place, road: site.workRules.road }) ? [road] : []),
    ...(site.place === 'roof' || site.workRules.roofEdge !== undefined ? [roof] : []),
    ...(site.supplies.some(supply => waterOf(supply.kind) === 'reclaimed') ? [reclaimed] : [])
  ]
  return lines.length > 0 ? lines.join(' ') : undefined
}
