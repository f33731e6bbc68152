import type { MapMark } from '../binder/make-map-page.ts'
import type { Words } from '../words/words.ts'
import { distanceM } from '../domain/distance.ts'
import { element, escapeXml, figure, label, line, rect } from './svg.ts'
import type { Box } from './svg.ts'

const WIDTH = 1060
const HEIGHT = 700
const EDGE = 46
const MARK = 6
/** Half the side of the square round a mark that is pressed with it: 24 px and more, also where the map is drawn a little smaller (WCAG 2.2, 2.5.8). */
const PRESSED = 14
/** Width of a letter and height of a line of a name, as the style sheet sets it: some 7 pt where the map is as wide as a sheet. */
const LETTER = 7.9
const LINE = 17
/** A map of one place, or of places in one street, still shows some land around them. */
const LEAST_DEGREES = 0.01
const DEGREE_STEPS = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30]
const MOST_LINES = 8

interface Frame {
  readonly x: (longitude: number) => number
  readonly y: (latitude: number) => number
  readonly west: number
  readonly east: number
  readonly south: number
  readonly north: number
}

/** The sites as marks on a grid of degrees, in one scale both ways at the middle of the map; no tile of anybody's is fetched. */
export function fleetMap(marks: readonly MapMark[], words: Words['fleet']): string {
  if (marks.length === 0) return ''
  const frame = frameOf(marks)
  const placed = marks.map(mark => ({ mark, x: frame.x(mark.longitude), y: frame.y(mark.latitude) }))
  const inner = [
    rect({ x: 0.5, y: 0.5, width: WIDTH - 1, height: HEIGHT - 1 }, { fill: 'none', stroke: 'currentColor' }),
    ...graticule(frame),
    ...placed.map(({ mark, x, y }) => linked(mark, pressed(x, y) + markOf(mark.state, x, y))),
    ...names(placed).map(({ mark, box, text, textX, anchor }) =>
      linked(mark, label(textX, box.y + LINE - 5, text, { class: 'map-name', 'text-anchor': anchor }))
    ),
    scaleBar(frame, words)
  ]
  return figure(WIDTH, HEIGHT, words.mapTitle, inner.join('')).replace('role="img" ', '')
}

function linked({ href, title, word }: MapMark, inner: string): string {
  return element('a', { href }, `<title>${escapeXml(`${title}, ${word}`)}</title>${inner}`)
}

function frameOf(marks: readonly MapMark[]): Frame {
  const range = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const
  const [south, north] = range(marks.map(one => one.latitude))
  const [west, east] = range(marks.map(one => one.longitude))
  const [middle, center] = [(south + north) / 2, (west + east) / 2]
  // A degree of longitude is as many times shorter than one of latitude as the cosine of the latitude says.
  const squeeze = Math.max(0.1, Math.cos((middle * Math.PI) / 180))
  const wide = Math.max(east - west, LEAST_DEGREES) * squeeze
  const high = Math.max(north - south, LEAST_DEGREES)
  const scale = Math.min((WIDTH - 2 * EDGE - 120) / wide, (HEIGHT - 2 * EDGE) / high)
  const x = (longitude: number): number => WIDTH / 2 - 50 + (longitude - center) * squeeze * scale
  const y = (latitude: number): number => HEIGHT / 2 - (latitude - middle) * scale
  return {
    x,
    y,
    west: center - (WIDTH / 2 - 50) / (squeeze * scale),
    east: center + (WIDTH / 2 + 50) / (squeeze * scale),
    south: middle - HEIGHT / 2 / scale,
    north: middle + HEIGHT / 2 / scale
  }
}

function graticule({ x, y, west, east, south, north }: Frame): string[] {
  const step = DEGREE_STEPS.find(one => (east - west) / one <= MOST_LINES) ?? 30
  const rows = DEGREE_STEPS.find(one => (north - south) / one <= MOST_LINES) ?? 30
  const style = { stroke: 'currentColor', 'stroke-width': 0.5, 'stroke-dasharray': '1 4' }
  return [
    ...ticks(west, east, step).flatMap(at => [
      line(x(at), 1, x(at), HEIGHT - 1, style),
      label(x(at) + 3, HEIGHT - 6, degrees(at, step, 'E', 'W'), { class: 'map-degree' })
    ]),
    ...ticks(Math.max(-90, south), Math.min(90, north), rows).flatMap(at => [
      line(1, y(at), WIDTH - 1, y(at), style),
      label(4, y(at) - 3, degrees(at, rows, 'N', 'S'), { class: 'map-degree' })
    ])
  ]
}

function ticks(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step)
  return Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, n) => (first + n) * step)
}

function degrees(value: number, step: number, above: string, below: string): string {
  const places = Math.max(0, Math.ceil(-Math.log10(step)))
  const text = Math.abs(value).toFixed(places)
  return `${text}°${Number(text) === 0 ? '' : value > 0 ? above : below}`
}

/** Told apart by shape and filling: overdue a full square, soon a half disk, no date a ring, nothing due a small dot. */
function markOf(state: MapMark['state'], x: number, y: number): string {
  const ring = { cx: x, cy: y, r: MARK, fill: 'var(--paper, #fff)', stroke: 'currentColor', 'stroke-width': 1.5 }
  if (state === 'bad')
    return rect({ x: x - MARK, y: y - MARK, width: 2 * MARK, height: 2 * MARK }, { fill: 'currentColor' })
  if (state === 'soon') {
    const half = element('path', {
      d: `M${(x - MARK).toFixed(2)} ${y.toFixed(2)}a${MARK} ${MARK} 0 0 0 ${2 * MARK} 0z`,
      fill: 'currentColor'
    })
    return element('circle', ring) + half
  }
  return state === 'unknown'
    ? element('circle', ring)
    : element('circle', { cx: x, cy: y, r: 3.5, fill: 'currentColor' })
}

function pressed(x: number, y: number): string {
  const corner = `${(x - PRESSED).toFixed(2)} ${(y - PRESSED).toFixed(2)}`
  return element('path', {
    d: `M${corner}h${2 * PRESSED}v${2 * PRESSED}h-${2 * PRESSED}z`,
    fill: 'none',
    'pointer-events': 'all'
  })
}

interface PlacedMark {
  readonly mark: MapMark
  readonly x: number
  readonly y: number
}

interface Name {
  readonly mark: MapMark
  readonly text: string
  readonly box: Box
  readonly textX: number
  readonly anchor: 'start' | 'middle' | 'end'
}

/** A name beside its mark where it covers neither a mark nor another name; left out where there is no such place. */
function names(placed: readonly PlacedMark[]): Name[] {
  const taken: Grid = new Map()
  for (const { x, y } of placed) add(taken, { x: x - MARK, y: y - MARK, width: 2 * MARK, height: 2 * MARK })
  return placed.flatMap(({ mark, x, y }) => {
    const width = mark.title.length * LETTER + 4
    const box = [
      { x: x + MARK + 3, y: y - LINE / 2, textX: x + MARK + 3, anchor: 'start' },
      { x: x - MARK - 3 - width, y: y - LINE / 2, textX: x - MARK - 3, anchor: 'end' },
      { x: x - width / 2, y: y - MARK - LINE, textX: x, anchor: 'middle' },
      { x: x - width / 2, y: y + MARK, textX: x, anchor: 'middle' },
      { x: x + MARK, y: y - MARK - LINE, textX: x + MARK, anchor: 'start' },
      { x: x + MARK, y: y + MARK, textX: x + MARK, anchor: 'start' }
    ]
      .map(corner => ({ ...corner, anchor: corner.anchor as Name['anchor'], width, height: LINE }))
      .find(one => isInside(one) && !touches(taken, one))
    if (!box) return []
    add(taken, box)
    return [{ mark, text: mark.title, box, textX: box.textX, anchor: box.anchor }]
  })
}

const isInside = ({ x, y, width, height }: Box): boolean =>
  x > 2 && y > 2 && x + width < WIDTH - 2 && y + height < HEIGHT - 40

/** Boxes by the cells they stand in, so that thousands are looked through quickly. */
type Grid = Map<string, Box[]>

function add(grid: Grid, box: Box): void {
  for (const cell of cellsOf(box)) grid.set(cell, [...(grid.get(cell) ?? []), box])
}

function touches(grid: Grid, box: Box): boolean {
  return cellsOf(box).some(cell => (grid.get(cell) ?? []).some(other => overlap(box, other)))
}

const CELL = 40

function cellsOf({ x, y, width, height }: Box): string[] {
  const cells: string[] = []
  for (let column = Math.floor(x / CELL); column <= Math.floor((x + width) / CELL); column += 1)
    for (let row = Math.floor(y / CELL); row <= Math.floor((y + height) / CELL); row += 1)
      cells.push(`${column} ${row}`)
  return cells
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/** A round length, true at the latitude of the middle. */
function scaleBar({ west, east, south, north }: Frame, words: Words['fleet']): string {
  const latitude = (south + north) / 2
  const step = Math.min(10, east - west)
  const across = (distanceM({ latitude, longitude: west }, { latitude, longitude: west + step }) / step) * (east - west)
  const most = (across * 160) / WIDTH
  const power = 10 ** Math.floor(Math.log10(most))
  const meters = [5, 2, 1].map(one => one * power).find(one => one <= most) ?? power
  const length = (meters / across) * WIDTH
  const [x, y] = [WIDTH - length - 20, HEIGHT - 30]
  const text = meters >= 1000 ? `${meters / 1000}\u00a0km` : `${meters}\u00a0m`
  const bar = element('path', {
    d: `M${x.toFixed(2)} ${y - 5}v5h${length.toFixed(2)}v-5`,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 1.5
  })
  return (
    bar +
    label(WIDTH - 20, y - 9, words.scale(text, degrees(latitude, 1, 'N', 'S')), {
      class: 'map-degree',
      'text-anchor': 'end'
    })
  )
}
