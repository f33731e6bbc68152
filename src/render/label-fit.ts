import type { Label } from '../binder/pages.ts'
import { MONO_EM, linesOf, textEm } from './letter-widths.ts'

/** The words that the template sets on a label, which take room as well. */
export interface LabelWords {
  readonly shutOff: string
  readonly battery: string
  readonly coil: string
  readonly moreStations: (count: number) => string
}

/** What a label has to itself, mm. */
export interface LabelRoom {
  readonly widthMm: number
  /** Without the plan code's share. */
  readonly heightMm: number
  readonly planMm: number
  /** All of it is made smaller by this in the end. */
  readonly zoom: number
  readonly largeMm: number
  /** 0 where there is no spare code. */
  readonly spareMm: number
}

export interface LabelFit {
  /** Whether all that a label must say has room: hazard, site, box, tag and how to stop the water. */
  readonly fits: boolean
  readonly hazardMm: number
  readonly tagMm: number
  readonly siteMm: number
  /** As they stand on it: shortened where they are too long for any type. */
  readonly text: Pick<Label, 'site' | 'battery' | 'coil' | 'foot'>
  /** Type of the address. */
  readonly urlMm: number
  /** What the type of the lower part is set larger or smaller by. */
  readonly type: number
  readonly columns: 1 | 2 | 3
  /** Whether battery and coils stand beside the stations. */
  readonly kit: 'beside' | 'below'
  /** Whether the words to stop the water stand beside where it is stopped or above it; or both across the label, above the spare codes. */
  readonly stop: 'beside' | 'above' | 'across'
  /** Stations that have room. */
  readonly stations: Label['stations']
  /** The others, in words. */
  readonly more?: string
  readonly hasSpare: boolean
  /** Type of the plan's lines; 0 where they have no room and stand in the code alone. */
  readonly planMm: number
}

/* The measures of templates/css/label.css, mm. */
const MM_PER_PT = 25.4 / 72
const EDGE = 1.8
const SIDES = 4.8
const BOX_LINE = 7.6
const TAG_LINE = 1.05
const LINE = 1.18
/** Letters of the tag are set apart a little. */
const TAG_LETTER_EM = MONO_EM + 0.015
const LARGEST_TAG = 19
/** As printed: read at arm's length (common practice, no source). */
const LEAST_TAG = 6
/** What is longer than a tag is none; a finding says so, and it stands there as it was written. */
const TAG_LETTERS = 7
const LEAST_LONG_TAG = 1.5
const HAZARD = { largest: 15 * MM_PER_PT, least: 7 * MM_PER_PT, edges: 2.2, sides: 22, symbolEm: 1.6 }
const SITE = [11, 9.5, 8].map(pt => pt * MM_PER_PT)
/** At type 1. */
const TYPE = { stop: 11, stopWords: 12, stations: 10.5, kit: 10 }
/** Beside a spare code. */
const GAP = 2
/** Battery and coils beside the stations leave those too little. */
const NARROW = 100
const STOP = { arrow: 11, sides: 6, edges: 3.6 }
const STATIONS = { sides: 3, between: 4, afterName: 1.6, edges: 1.8 }
const KIT = { beside: 46, name: 15, afterName: 1.6, between: 4 }
const URL_PT = 7.4
/** Printed type is never finer, pt. */
const LEAST_PT = 6.5
/** The address is there for whoever types it; it stands in the code as well. */
const LEAST_URL_PT = 5.5
const LARGEST_TYPE = 1.25
const STEP = 0.03
/** Browsers set letters a hair wider or narrower than the table says. */
const SURE = 1.02

/**
 * Chooses type and places: the largest type at which everything has room. At the least type the last stations give way, then the ends of long names
 * and kinds, then the spare codes; where hazard, box, tag and the whole of the shut-off have no room even then, it does not fit.
 */
export function fitLabel(label: Label, room: LabelRoom, words: LabelWords): LabelFit {
  const whole = fitted(label, room, words)
  if (whole.fits) return whole
  const short = shortened(label)
  const kept = fitted(short, room, words)
  return kept.fits || room.spareMm === 0 ? kept : fitted(short, { ...room, spareMm: 0 }, words)
}

/** Names and kinds of so many characters have room on the smallest label. */
const MOST = { site: 48, battery: 32, coil: 32, foot: 48 }

function shortened(label: Label): Label {
  const { site, battery, coil, foot } = label
  return {
    ...label,
    site: cutAt(site, MOST.site),
    battery: cutAt(battery, MOST.battery),
    coil: cutAt(coil, MOST.coil),
    foot: cutAt(foot, MOST.foot)
  }
}

/** Whole words as far as they go, and a sign that there is more. */
function cutAt(text: string, most: number): string {
  if (text.length <= most) return text
  const head = text.slice(0, most)
  return `${head.replace(/\s+\S*$/u, '')}…`
}

function fitted(label: Label, room: LabelRoom, words: LabelWords): LabelFit {
  const centreMm = room.widthMm - EDGE - SIDES - 2 * room.largeMm
  const hazard = hazardOf(label, room)
  const centre = centreOf(label, centreMm, room)
  const lowerMm = room.heightMm - EDGE - hazard.heightMm - room.largeMm
  const hasSpare = room.spareMm > 0 && room.spareMm <= lowerMm + 0.05
  const lower = {
    acrossMm: room.widthMm - EDGE - SIDES,
    widthMm: room.widthMm - EDGE - SIDES - (hasSpare ? 2 * (room.spareMm + GAP) : 0),
    heightMm: lowerMm,
    aboveMm: hasSpare ? lowerMm - room.spareMm : 0,
    zoom: room.zoom
  }
  const chosen = chooseLower(label, lower, words)
  return {
    ...chosen,
    fits: chosen.fits && centre.fits && hazard.fits,
    hazardMm: hazard.typeMm,
    tagMm: centre.tagMm,
    siteMm: centre.siteMm,
    text: { site: label.site, battery: label.battery, coil: label.coil, foot: label.foot },
    urlMm: urlMm(label, lower),
    hasSpare,
    planMm: planType(label, room)
  }
}

interface Hazard {
  readonly typeMm: number
  readonly heightMm: number
  readonly fits: boolean
}

/** In one line where it can be, in two where they leave the codes their room. */
function hazardOf({ hazardLine }: Label, room: LabelRoom): Hazard {
  if (hazardLine === undefined) return { typeMm: 0, heightMm: 0, fits: true }
  const mostMm = room.heightMm - EDGE - room.largeMm - room.spareMm
  const width = room.widthMm - HAZARD.sides
  for (let typeMm = HAZARD.largest; typeMm >= HAZARD.least; typeMm -= 0.1) {
    const lines = linesOf(hazardLine, (width / typeMm - HAZARD.symbolEm) / SURE)
    const heightMm = lines * typeMm * LINE + HAZARD.edges
    if (heightMm <= Math.max(mostMm, HAZARD.largest * LINE + HAZARD.edges)) return { typeMm, heightMm, fits: true }
  }
  return { typeMm: HAZARD.least, heightMm: 0, fits: false }
}

interface Centre {
  readonly tagMm: number
  readonly siteMm: number
  readonly fits: boolean
}

/** The tag fills what box and site leave it. */
function centreOf(label: Label, widthMm: number, { largeMm: heightMm, zoom }: LabelRoom): Centre {
  const byWidth = Math.min(LARGEST_TAG, widthMm / (Math.max(label.tag.length, 1) * TAG_LETTER_EM))
  const leastTag = label.tag.length > TAG_LETTERS ? LEAST_LONG_TAG : LEAST_TAG
  let last: Centre = { tagMm: 0, siteMm: 0, fits: false }
  for (const siteMm of SITE) {
    const lines = linesOf(label.site, widthMm / siteMm / SURE)
    const tagMm = Math.floor(Math.min(byWidth, (heightMm - BOX_LINE - lines * siteMm * LINE) / TAG_LINE) * 10) / 10
    last = { tagMm: Math.max(tagMm, 0), siteMm, fits: tagMm * zoom >= leastTag }
    if (tagMm >= 0.9 * byWidth) break
  }
  return last
}

interface Lower {
  readonly acrossMm: number
  /** Between the spare codes. */
  readonly widthMm: number
  readonly heightMm: number
  /** Free above the spare codes. */
  readonly aboveMm: number
  readonly zoom: number
}

type Chosen = Pick<LabelFit, 'fits' | 'type' | 'columns' | 'kit' | 'stop' | 'stations' | 'more'>

function chooseLower(label: Label, room: Lower, words: LabelWords): Chosen {
  const least = Math.min(1, LEAST_PT / TYPE.kit / room.zoom)
  const { stations } = label
  for (let type = LARGEST_TYPE; type >= least - 1e-9; type -= STEP) {
    const found = arranged(label, stations, type, room, words)
    if (found) return found
  }
  for (let kept = stations.length - 1; kept >= 0; kept -= 1) {
    const more = words.moreStations(stations.length - kept)
    const found = arranged(label, stations.slice(0, kept), least, room, words, more)
    if (found) return found
  }
  return { fits: false, type: least, columns: 1, kit: 'below', stop: 'above', stations: [] }
}

/** The first way in which it has room at such type. */
function arranged(
  label: Label,
  stations: Label['stations'],
  type: number,
  room: Lower,
  words: LabelWords,
  more?: string
): Chosen | undefined {
  const kits = room.widthMm < NARROW ? (['below', 'beside'] as const) : (['beside', 'below'] as const)
  for (const kit of kits)
    for (const columns of [1, 2, 3] as const)
      for (const stop of ['across', 'beside', 'above'] as const) {
        if (columns > 1 && stations.length < 2 * columns) continue
        const chosen = { type, columns, kit, stop, stations, ...(more === undefined ? {} : { more }) }
        if (lowerHeight(label, chosen, room, words) <= room.heightMm) return { ...chosen, fits: true }
      }
  return undefined
}

function lowerHeight(label: Label, way: Omit<Chosen, 'fits'>, room: Lower, words: LabelWords): number {
  const stations = stationsHeight(way, room)
  const kit = kitHeight(label, way, room, words)
  const foot = way.kit === 'beside' ? Math.max(stations, kit) : stations + kit
  return stopHeight(label, way, room, words) + foot + STATIONS.edges + urlHeight(label, room)
}

function stopHeight(label: Label, { type, stop }: Omit<Chosen, 'fits'>, room: Lower, words: LabelWords): number {
  const size = TYPE.stop * type * MM_PER_PT
  const wordsSize = TYPE.stopWords * type * MM_PER_PT
  const arrow = textEm(words.shutOff) * wordsSize * SURE + STOP.arrow
  const all = stop === 'across' ? room.acrossMm : room.widthMm
  const width = all - STOP.sides - (stop === 'above' ? 0 : arrow)
  if (width < 8 * size || arrow > all) return Infinity
  const text = linesOf(label.shutOff, width / size / SURE) * size * LINE
  const head = wordsSize * LINE
  if (stop === 'above') return STOP.edges + text + head + 1.6
  const height = STOP.edges + Math.max(text, head)
  return stop === 'across' && height > room.aboveMm ? Infinity : height
}

function stationsHeight({ type, columns, kit, stations, more }: Omit<Chosen, 'fits'>, room: Lower): number {
  const size = TYPE.stations * type * MM_PER_PT
  const all = room.widthMm - STATIONS.sides - (kit === 'beside' ? KIT.beside + STATIONS.between : 0)
  const width = (all - (columns - 1) * STATIONS.between) / columns
  const lines = stations.map(({ station, waters }) => {
    const left = width - station.length * MONO_EM * size - STATIONS.afterName
    return left < 5 * size ? Infinity : linesOf(waters, left / size / SURE)
  })
  // Columns are filled one after the other and no station is parted, so that one of them may be longer by what did not fit.
  const total = lines.reduce((sum, one) => sum + one, 0)
  const longest = columns === 1 ? total : Math.ceil(total / columns) + Math.max(0, ...lines) - 1
  return (longest + (more === undefined ? 0 : linesOf(more, all / size / SURE))) * size * LINE
}

function kitHeight(label: Label, { type, kit }: Omit<Chosen, 'fits'>, room: Lower, words: LabelWords): number {
  const size = TYPE.kit * type * MM_PER_PT
  const facts = [
    [words.battery, label.battery],
    [words.coil, label.coil]
  ] as const
  if (kit === 'beside') {
    const width = KIT.beside - KIT.name * type
    return facts.reduce((sum, [, value]) => sum + linesOf(value, width / size / SURE), 0) * size * LINE
  }
  const width = room.widthMm - STATIONS.sides
  const widths = facts.map(([name, value]) => (textEm(name) + textEm(value)) * size * SURE + KIT.afterName)
  if (widths.reduce((sum, one) => sum + one, KIT.between) <= width) return size * LINE
  const left = facts.map(([name]) => width - textEm(name) * size * SURE - KIT.afterName)
  return facts.reduce((sum, [, value], at) => sum + linesOf(value, (left[at] ?? 0) / size / SURE), 0) * size * LINE
}

/** Address and day of the data: beside each other where they have room. */
function urlHeight(label: Label, room: Lower): number {
  const size = urlMm(label, room)
  const width = (room.widthMm - STATIONS.sides) / (size * MONO_EM)
  const rows = (text: string): number => Math.ceil(text.length / Math.floor(width))
  const together = togetherOf(label) <= width
  return (together ? 1 : rows(label.url) + rows(label.foot)) * size * LINE + 0.8
}

const togetherOf = ({ url, foot }: Label): number => url.length + foot.length + 3

/** Smaller where both then stand on one line. */
function urlMm(label: Label, { widthMm, zoom }: Lower): number {
  const least = LEAST_URL_PT / zoom
  const oneLinePt = (widthMm - STATIONS.sides) / (togetherOf(label) * MONO_EM) / MM_PER_PT / SURE
  const pt = oneLinePt >= least ? Math.min(URL_PT, oneLinePt) : URL_PT
  return Math.max(pt, least) * MM_PER_PT
}

const PLAN = { edges: 3, between: 3, sides: 4, title: 10, largest: 10, step: 0.25 }

/** The largest type at which the lines of the plan stand beside their code; 0 where even the least is too large. */
function planType({ plan }: Label, room: LabelRoom): number {
  if (!plan) return 0
  const code = plan.code.sideMm / room.zoom
  const width = room.widthMm - EDGE - code - PLAN.between - PLAN.sides
  for (let pt = PLAN.largest; pt * room.zoom >= LEAST_PT - 1e-9; pt -= PLAN.step) {
    const size = pt * MM_PER_PT
    const titleMm = PLAN.title * MM_PER_PT
    const title = linesOf(plan.title, width / titleMm / SURE) * titleMm * LINE
    const lines = plan.lines.reduce((sum, one) => sum + linesOf(one, width / size / SURE), 0)
    if (title + lines * size * LINE + PLAN.edges <= room.planMm) return size
  }
  return 0
}
