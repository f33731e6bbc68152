import type { WiringFigure, WiringRow } from '../../binder/figures/wiring.ts'
import { element, figure, label, line, monoWidth, rect, rounded } from '../svg.ts'

const WIDTH = 480
const UNIT = 54
const FROM = UNIT + 7
const END = 318
const END_WIDTH = 26
const BUS = 362
const WORDS = 374
const ROW = 26
const TOP = 6
const APART = 7

/**
 * A controller's terminals on the left, what hangs on them on the right, one row each; a common runs down on the right and back along
 * the foot. Not to scale: lengths and splices are written, where each lies is on the record drawing.
 */
export function wiringFigure(wiring: WiringFigure): string {
  let y = TOP
  const placed = wiring.rows.map(row => {
    const at = y + 13
    y += ROW + (row.conductors - 1) * APART
    return { row, at }
  })
  const foot = wiring.common ? y + 14 : y
  const bottom = wiring.common ? foot + 14 : y + 2
  const shared = placed.filter(({ row }) => row.shared)
  const block = rect({ x: 1, y: 1, width: UNIT, height: bottom - 2 }, { class: 'terminal' })
  const name = label(UNIT / 2 - 8, 14, wiring.controller, { class: 'terminal-name', 'text-anchor': 'middle' })
  const rows = placed.map(({ row, at }) => drawRow(row, at))
  const bus = wiring.common && shared[0] ? drawCommon(wiring.common, busTop(shared[0]), foot) : ''
  return figure(WIDTH, bottom, wiring.alt, block + name + bus + rows.join(''))
}

const busTop = ({ row, at }: { row: WiringRow; at: number }): number => at + ((row.conductors - 1) * APART) / 2

function drawRow(row: WiringRow, at: number): string {
  const count = row.conductors
  const wires = Array.from({ length: count }, (_, index) => {
    const y = at + index * APART
    return terminal(y) + line(FROM, y, END, y, { class: 'wire thin' })
  })
  const low = at + (count - 1) * APART
  const middle = (at + low) / 2
  const toBus = row.shared ? line(END + END_WIDTH, middle, BUS, middle, { class: 'wire thin' }) + dot(BUS, middle) : ''
  const words =
    label(UNIT - 6, at + 3, row.terminal, { class: 'number', 'text-anchor': 'end' }) +
    label(FROM + 4, at - 4.5, row.wires, { class: 'small' }) +
    label(WORDS, middle - 1.5, row.name, { class: 'lane strong' }) +
    label(WORDS, middle + 7.5, [row.place, row.note].filter(Boolean).join(', '), { class: 'small' })
  return wires.join('') + toBus + drawSplices(row, at, low) + drawEnd(row, at, low) + words
}

/** A diamond through all wires of the row, its place in words below it. */
function drawSplices({ splices }: WiringRow, at: number, low: number): string {
  return splices
    .map((place, index) => {
      const x = FROM + ((index + 1) / (splices.length + 1)) * (END - FROM)
      const marks = at === low ? [at] : [at, low]
      const d = marks.map(y => `M${rounded(x - 3.5)} ${rounded(y)}l3.5 -3.5 3.5 3.5 -3.5 3.5z`).join('')
      const words = label(x + 6, low + 9, place, { class: 'small' })
      return element('path', { d, class: 'splice' }) + words
    })
    .join('')
}

function drawEnd({ end }: WiringRow, at: number, low: number): string {
  const box = { x: END, y: at - 5, width: END_WIDTH, height: low - at + 10 }
  if (end === 'closed contact' || end === 'open contact') return contact(END, at, low, end === 'closed contact')
  const second = end === 'coils' ? rect({ ...box, x: box.x + 4, y: box.y + 4 }, { class: 'outline paper' }) : ''
  const half =
    end === 'three leads' ? line(END, (at + low) / 2, END + END_WIDTH, (at + low) / 2, { class: 'joint' }) : ''
  const relay =
    end === 'relay'
      ? line(box.x, box.y + box.height, box.x + box.width, box.y, { class: 'joint' }) +
        rect({ x: box.x - 3, y: box.y - 3, width: box.width + 6, height: box.height + 6 }, { class: 'band-edge' })
      : ''
  return second + rect(box, { class: 'outline paper' }) + half + relay
}

/** Two points and a blade between them: lying on both, or lifted off. */
function contact(x: number, at: number, low: number, closed: boolean): string {
  const to = closed ? x + 2 : x + 10
  return dot(x, at) + dot(x, low) + line(x, low, to, at, { class: 'wire thin' })
}

function drawCommon(
  { terminal: name, label: words, sensors }: NonNullable<WiringFigure['common']>,
  top: number,
  y: number
): string {
  const down = line(BUS, top, BUS, y, { class: 'wire thin dashed' })
  const gap = 120
  const start = FROM + monoWidth(words, 7) + 24
  const switches = sensors.map((sensor, index) => {
    const x = Math.min(start + index * gap, BUS - 40)
    const patch = rect({ x, y: y - 1.5, width: 20, height: 3 }, { class: 'halo' })
    const blade = line(x, y, x + 20, sensor.contact === 'closed' ? y - 2 : y - 9, { class: 'wire thin' })
    return (
      patch +
      dot(x, y) +
      dot(x + 20, y) +
      blade +
      label(x + 10, y + 10, sensor.name, { class: 'small', 'text-anchor': 'middle' })
    )
  })
  return (
    down +
    terminal(y) +
    line(FROM, y, BUS, y, { class: 'wire thin dashed' }) +
    switches.join('') +
    label(UNIT - 6, y + 3, name, { class: 'number', 'text-anchor': 'end' }) +
    label(FROM + 4, y - 4.5, words, { class: 'small' })
  )
}

function terminal(y: number): string {
  return element('circle', { cx: UNIT + 3, cy: y, r: 3, class: 'outline paper' })
}

function dot(x: number, y: number): string {
  return element('circle', { cx: x, cy: y, r: 2, class: 'solid' })
}
