import type { EastNorth } from '../domain/drawing/spot.ts'
import type { Bounds, DrawnArea, DrawnMark } from '../plan/drawing-plan.ts'
import { fromSi } from '../units/quantity.ts'
import { show, showStated } from '../units/show.ts'
import type { PageContext } from './context.ts'
import { revisionOf } from './context.ts'
import { flowValue } from './flow-value.ts'
import type { PlanArea, PlanFigure, PlanLegend, PlanMark, ScaleBar } from './figures/plan.ts'
import { holdsShort, markName, symbolOf, unplacedName } from './place-names.ts'

/** The whole figure on paper, upright and turned, mm: a page without its margins and the caption. */
const SHEETS = {
  A4: [
    { widthMm: 169, heightMm: 242 },
    { widthMm: 262, heightMm: 154 }
  ],
  Letter: [
    { widthMm: 174, heightMm: 224 },
    { widthMm: 244, heightMm: 158 }
  ]
} as const
/** Beside or below the map, mm. */
const SIDE_MM = 64
const FOOT_MM = 56
const BAND_FOOT_MM = 48
const METERS = [1, 2, 5, 10, 20, 50, 100, 200, 500]
const FEET = [5, 10, 20, 50, 100, 200, 500, 1000]
const BAR_MM = 44
/** What lies nearer to the edge of a detail is left out: its symbol would be cut. */
const SYMBOL_MM = 3
/** A box and its ties are drawn no larger. */
const LEAST_RATIO = 40
/** Names on the sheet of what it does not show; the table has them all. */
const NAMES_MOST = 6

export interface PlanOptions {
  readonly widthMm: number
  readonly heightMm: number
}

/** The record drawing on a page of its own; undefined where nothing has a place. */
export function recordFigure(context: PageContext): (PlanFigure & { readonly turned: boolean }) | undefined {
  const { site, plan, words } = context
  const { sheet, bounds } = plan.drawing
  if (!sheet || !bounds) return undefined
  const { widthMm, heightMm } = SHEETS[site.paper][sheet.turned ? 1 : 0]
  const footMm = sheet.turned ? BAND_FOOT_MM : FOOT_MM
  const map =
    sheet.legend === 'beside'
      ? { xMm: 0.3, yMm: 0.3, widthMm: widthMm - SIDE_MM - 3, heightMm: heightMm - 0.6 }
      : { xMm: 0.3, yMm: 0.3, widthMm: widthMm - 0.6, heightMm: heightMm - footMm - 2 }
  const marks = plan.drawing.marks.map(mark => markOf(mark, context))
  const scale = scaleText(sheet.ratio, context)
  return {
    figure: 'plan',
    title: words.drawing.title(site.title),
    alt: words.drawing.alt(
      scale,
      marks.map(one => [one.label, one.holds ? `(${one.holds})` : ''].join(' ').trim()),
      plan.drawing.areas.map(one => one.zone)
    ),
    turned: sheet.turned,
    widthMm,
    heightMm,
    map,
    ratio: sheet.ratio,
    middle: middleOfBounds(bounds),
    north: words.drawing.north,
    scale: { text: scale, bars: barsOf(sheet.ratio, BAR_MM, context) },
    areas: plan.drawing.areas.map(one => areaOf(one, context)),
    lines: plan.drawing.lines.map(({ name = '', ...one }) => ({ ...one, label: name })),
    marks,
    points: plan.drawing.points.map(({ name, ...spot }) => ({ ...spot, label: name })),
    ties: plan.drawing.ties.map(({ point, mark, amount }) => ({ from: point, to: mark, text: amount })),
    legend: legendOf(marks, context),
    titleBlock: { heading: words.drawing.heading, rows: titleRows(scale, context) }
  }
}

/** The ground round one box, with its ties. */
export function boxFigure(
  box: string,
  { widthMm, heightMm }: PlanOptions,
  context: PageContext
): PlanFigure | undefined {
  const { plan, words, site } = context
  const mark = plan.drawing.marks.find(one => one.what === 'box' && one.of === box)
  if (!mark) return undefined
  const ties = plan.drawing.ties.filter(one => one.mark.what === 'box' && one.mark.of === box)
  const bounds = around([mark, ...ties.map(one => one.point)])
  const ratio = fitted(bounds, { widthMm: widthMm - 16, heightMm: heightMm - 16 })
  const middle = middleOfBounds(bounds)
  const inView = inside(middle, ratio, { widthMm: widthMm - 2 * SYMBOL_MM, heightMm: heightMm - 2 * SYMBOL_MM })
  const points = plan.drawing.points.filter(inView)
  return {
    figure: 'plan',
    title: words.drawing.find.title(box),
    alt: words.drawing.find.alt(box, site.boxes.find(one => one.id === box)?.ties ?? []),
    widthMm,
    heightMm,
    map: { xMm: 0.3, yMm: 0.3, widthMm: widthMm - 0.6, heightMm: heightMm - 0.6 },
    ratio,
    middle,
    north: words.drawing.north,
    scale: { text: '', bars: barsOf(ratio, 18, context).slice(0, 1) },
    areas: plan.drawing.areas.map(({ points: corners }) => ({ points: corners, label: '' })),
    lines: plan.drawing.lines.map(one => ({ ...one, label: '' })),
    marks: plan.drawing.marks.filter(inView).map(one => {
      const { holds: _, ...bare } = markOf(one, context)
      return bare
    }),
    points: points.map(({ name, ...spot }) => ({ ...spot, label: name })),
    ties: ties.map(({ point, amount }) => ({ from: point, to: mark, text: amount }))
  }
}

/** Ground of some stations by pattern, each with its own words, the rest in outline; undefined where none is drawn. */
export function zonesFigure(
  stations: ReadonlyMap<string, string>,
  title: { readonly title: string; readonly alt: string },
  { widthMm, heightMm }: PlanOptions,
  context: PageContext
): PlanFigure | undefined {
  const { plan, words } = context
  const { areas, bounds } = plan.drawing
  if (!bounds || !areas.some(one => one.stations.some(id => stations.has(id)))) return undefined
  const ratio = fitted(bounds, { widthMm: widthMm - 12, heightMm: heightMm - 12 })
  return {
    figure: 'plan',
    ...title,
    widthMm,
    heightMm,
    map: { xMm: 0.3, yMm: 0.3, widthMm: widthMm - 0.6, heightMm: heightMm - 0.6 },
    ratio,
    middle: middleOfBounds(bounds),
    north: words.drawing.north,
    scale: { text: '', bars: barsOf(ratio, 30, context).slice(0, 1) },
    areas: areas.map(one => {
      const label = one.stations.flatMap(id => stations.get(id) ?? []).join(', ')
      return label === '' ? { points: one.points, label: '' } : { ...areaOf(one, context), label }
    }),
    lines: plan.drawing.lines.map(one => ({ ...one, label: '' })),
    marks: plan.drawing.marks.map(one => {
      const { holds: _, ...bare } = markOf(one, context)
      return bare
    }),
    points: [],
    ties: []
  }
}

/** Pattern of a zone, the same on the drawing and on every chart: by its place among the zones of the site. */
export function patternOf(station: string, { site }: PageContext): number {
  const zones = [...new Set(site.stations.map(one => one.zone))]
  const zone = site.stations.find(one => one.id === station)?.zone ?? ''
  return Math.max(0, zones.indexOf(zone))
}

function areaOf(area: DrawnArea, context: PageContext): PlanArea {
  const [first] = area.stations
  return {
    points: area.points,
    label: area.zone,
    ...(first === undefined ? {} : { pattern: patternOf(first, context) })
  }
}

function markOf(mark: DrawnMark, context: PageContext): PlanMark {
  const box = mark.what === 'box' ? context.site.boxes.find(one => one.id === mark.of) : undefined
  const holds = box ? holdsShort(box, context) : ''
  return {
    eastM: mark.eastM,
    northM: mark.northM,
    symbol: symbolOf(mark, context),
    label: markName(mark, context),
    ...(holds ? { holds } : {})
  }
}

function legendOf(marks: readonly PlanMark[], context: PageContext): PlanLegend {
  const { site, plan, words } = context
  const w = words.drawing
  const stations = site.stations.filter(({ id }) => plan.drawing.areas.some(one => one.stations.includes(id)))
  const symbols = [...new Set(marks.map(one => one.symbol))]
  const lost = plan.drawing.unplaced.map(one => unplacedName(one, context))
  const named = [...lost.slice(0, NAMES_MOST), ...(lost.length > NAMES_MOST ? ['…'] : [])]
  return {
    areas: stations.map(station => {
      const { id, zone, waters, valves } = station
      const flow = valves[0]?.normalFlow ? flowValue(station, site.units, words).text : ''
      return {
        pattern: patternOf(id, context),
        text: [w.zone(zone, id), flow, waters ?? ''].filter(Boolean).join(', ')
      }
    }),
    symbols: [
      ...symbols.map(symbol => ({ symbol, text: symbol === 'valve box' ? w.valveBox : w.places[symbol] })),
      ...(plan.drawing.points.length > 0 ? [{ symbol: 'point' as const, text: w.point }] : []),
      ...(plan.drawing.ties.length > 0 ? [{ symbol: 'tie' as const, text: w.tie }] : []),
      { symbol: 'aside' as const, text: w.aside }
    ],
    lines: [...new Set(plan.drawing.lines.map(one => one.kind))].map(kind => ({ kind, text: w.lines[kind] })),
    notes: named.length > 0 ? [w.notes.unplaced(named)] : []
  }
}

/** Number of the sheet that is drawn from the site file, at its own scale; never that of a sheet that was supplied. */
export function ownSheet({ site }: PageContext): string {
  const taken = new Set(site.closeout?.recordDrawings?.map(one => one.number))
  let count = 1
  while (taken.has(`P-${count}`)) count += 1
  return `P-${count}`
}

function titleRows(scale: string, context: PageContext): { label: string; value: string }[] {
  const { site, words } = context
  const w = words.drawing.block
  const sheets = site.closeout?.recordDrawings ?? []
  const [sheet] = sheets
  const tolerance = site.drawing?.tolerance ?? sheet?.surveyTolerance
  const pressures = site.supplies.flatMap(one => (one.staticPressure ? [showStated(one.staticPressure)] : []))
  const owner = site.contacts.find(one => one.role === 'owner')
  return [
    { label: w.site, value: site.title },
    { label: w.sheet, value: w.ownSheet(ownSheet(context), sheets.map(one => one.number).join(', ')) },
    { label: w.dated, value: site.drawing?.dated ?? sheet?.dated ?? w.notSupplied },
    { label: w.revision, value: revisionOf(context) },
    { label: w.scale, value: scale },
    { label: w.tolerance, value: tolerance ? w.within(`±${showStated(tolerance)}`) : w.notSupplied },
    { label: w.pressure, value: pressures.length > 0 ? w.static(pressures.join(', ')) : w.notSupplied },
    { label: w.by, value: owner?.name ?? owner?.company ?? w.notSupplied }
  ]
}

function scaleText(ratio: number, { site, words }: PageContext): string {
  return site.units === 'us' ? words.drawing.scaleFeet(Math.round(ratio / 12), ratio) : words.drawing.scale(ratio)
}

/** In both systems, the site's own first. */
function barsOf(ratio: number, mostMm: number, { site }: PageContext): ScaleBar[] {
  const mostM = (mostMm * ratio) / 1000
  const bar = (lengths: readonly number[], unit: 'm' | 'ft'): ScaleBar => {
    const most = fromSi(mostM, unit, 'length')
    const value = lengths.findLast(one => one <= most) ?? lengths[0] ?? 1
    const unitM = unit === 'ft' ? 0.3048 : 1
    return {
      lengthM: value * unitM,
      parts: String(value).startsWith('2') ? 4 : 5,
      from: '0',
      to: `${value}\u00a0${unit}`
    }
  }
  const [metric, us] = [bar(METERS, 'm'), bar(FEET, 'ft')]
  return site.units === 'us' ? [us, metric] : [metric, us]
}

function middleOfBounds({ west, south, east, north }: Bounds): EastNorth {
  return { eastM: (west + east) / 2, northM: (south + north) / 2 }
}

function around(spots: readonly EastNorth[]): Bounds {
  const [easts, norths] = [spots.map(one => one.eastM), spots.map(one => one.northM)]
  return { west: Math.min(...easts), south: Math.min(...norths), east: Math.max(...easts), north: Math.max(...norths) }
}

/** A ratio that fills a small map; its bar says how large it is. */
function fitted({ west, south, east, north }: Bounds, { widthMm, heightMm }: PlanOptions): number {
  const needed = Math.max((east - west) / widthMm, (north - south) / heightMm) * 1000
  return Math.max(LEAST_RATIO, Math.ceil(needed / 10) * 10)
}

function inside(middle: EastNorth, ratio: number, { widthMm, heightMm }: PlanOptions) {
  return (spot: EastNorth): boolean => {
    const [across, up] = [(widthMm * ratio) / 2000, (heightMm * ratio) / 2000]
    return Math.abs(spot.eastM - middle.eastM) < across && Math.abs(spot.northM - middle.northM) < up
  }
}

/** "12.4 m": a place as the table tells it. */
export const placeText = (meters: number, { site }: PageContext): string =>
  site.units === 'us' ? `${(meters / 0.3048).toFixed(1).replace('-', '−')}\u00a0ft` : show(meters, 'run', 'metric')
