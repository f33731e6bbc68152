import type { FigureSpec } from '../../binder/blocks.ts'
import { figure, hatch, label, line, monoWidth, rect, stack } from '../svg.ts'
import { limitLine, loadSteps } from './load.ts'

type DayStrip = Extract<FigureSpec, { figure: 'day-strip' }>
type Lane = DayStrip['lanes'][number]

const WIDTH = 480
const NAMES = 104
const RIGHT = 16
const TEXT = 7
const ROW = 9
const BAR = 11
const HEAD = 22
const LOAD = 44

interface Scale {
  readonly at: (minute: number) => number
}

/** A day from noon to noon, so that a night stays whole: the window as a hatched band, each run as a solid bar with its words above it. */
export function dayStripFigure(strip: DayStrip): string {
  const span = strip.toMinute - strip.fromMinute
  const at = (minute: number) => NAMES + ((minute - strip.fromMinute) / span) * (WIDTH - NAMES - RIGHT)
  const windowRows = placeWindows(strip, at)
  const top = HEAD + windowRows.height
  const lanes = placeLanes(strip.lanes, { at }, top)
  const bottom = lanes.bottom
  const bands = strip.windows.map(({ from, to }) => {
    const [left, right] = [at(Math.max(from, strip.fromMinute)), at(Math.min(to, strip.toMinute))]
    const box = { x: left, y: top, width: right - left, height: bottom - top }
    return hatch(box, 6, { class: 'band' }) + rect(box, { class: 'band-edge' })
  })
  const hours = strip.hours.map(
    ({ minute, label: text }) =>
      line(at(minute), HEAD - 8, at(minute), bottom, { class: 'tick' }) +
      // The last one would run over the edge.
      (minute === strip.toMinute
        ? label(WIDTH, HEAD - 11, text, { class: 'axis', 'text-anchor': 'end' })
        : label(at(minute), HEAD - 11, text, { class: 'axis', 'text-anchor': 'middle' }))
  )
  const frame =
    line(NAMES, top, WIDTH - RIGHT, top, { class: 'heavy' }) +
    line(NAMES, bottom, WIDTH - RIGHT, bottom, { class: 'heavy' })
  const load = strip.load ? placeLoad(strip.load, { at }, bottom) : { text: '', bottom: bottom + 4 }
  const inner = bands.join('') + hours.join('') + windowRows.text + lanes.text + frame + load.text
  return figure(WIDTH, load.bottom, strip.title, inner)
}

/** What is drawn over the day, on the hours of the lanes. Its words stand at the left, where no step can run through them. */
function placeLoad(load: NonNullable<DayStrip['load']>, { at }: Scale, top: number): { text: string; bottom: number } {
  const base = top + 12 + LOAD
  const box = { at, base, height: LOAD, top: load.top }
  const heightOf = (value: number) => base - (load.top > 0 ? value / load.top : 0) * LOAD
  const peak = { y: heightOf(load.peak.value), text: load.peak.label }
  const limit = load.limit && { y: heightOf(load.limit.value), text: load.limit.label }
  const words = apart(limit ? [limit, peak] : [peak]).map(one =>
    label(0, Math.min(one.y, base - ROW), one.text, { class: 'small' })
  )
  const text =
    loadSteps(load.steps, box) +
    (load.limit ? limitLine(load.limit.value, NAMES, WIDTH - RIGHT, box) : '') +
    words.join('') +
    label(0, base, load.label, { class: 'lane' }) +
    line(NAMES, base, WIDTH - RIGHT, base, { class: 'heavy' })
  return { text, bottom: base + 4 }
}

/** Words beside their heights, a line's height apart at least, and above the name of the load. */
function apart<T extends { readonly y: number }>(words: readonly T[]): T[] {
  const sorted = [...words].sort((a, b) => a.y - b.y)
  return sorted.map((one, index) => ({ ...one, y: Math.max(one.y + 2.5, (sorted[0]?.y ?? 0) + 2.5 + index * ROW) }))
}

function placeWindows({ windows, fromMinute }: DayStrip, at: Scale['at']): { text: string; height: number } {
  const spans = windows.map(({ from, label: text }) => textSpan(at(Math.max(from, fromMinute)), text))
  const rows = stack(spans, 4)
  const count = Math.max(0, ...rows.map(row => row + 1))
  const text = spans.map(({ from, text: words }, index) =>
    onPatch(from, HEAD + ROW * ((rows[index] ?? 0) + 1) - 3, words)
  )
  return { text: text.join(''), height: count * ROW }
}

function placeLanes(lanes: readonly Lane[], scale: Scale, top: number): { text: string; bottom: number } {
  let y = top
  const parts = lanes.map((lane, index) => {
    const placed = placeLane(lane, scale, y)
    const rule = index > 0 ? line(0, y, WIDTH - RIGHT, y, { class: 'rule' }) : ''
    y += placed.height
    return rule + placed.text
  })
  return { text: parts.join(''), bottom: Math.max(y, top + 12) }
}

/** The words of a bar stand above it and never meet: a lane grows by as many rows as its words need. */
function placeLane({ label: name, bars }: Lane, { at }: Scale, top: number): { text: string; height: number } {
  const spans = bars.map(bar => textSpan(at(bar.from), bar.label))
  const rows = stack(spans, 4)
  const count = Math.max(1, ...rows.map(row => row + 1))
  const barTop = top + 3 + count * ROW
  const words = spans.map(({ from, text }, index) => {
    const baseline = barTop - 2.5 - (rows[index] ?? 0) * ROW
    return onPatch(from, baseline, text)
  })
  const drawn = bars.map(({ from, to }) => {
    const width = Math.max(at(to) - at(from), 1.2)
    return rect({ x: at(from), y: barTop, width, height: BAR }, { class: 'solid' })
  })
  const title = laneName(name).map((text, index, all) =>
    label(0, barTop + BAR - 2 - (all.length - 1 - index) * 9, text, { class: 'lane' })
  )
  return { text: title.join('') + drawn.join('') + words.join(''), height: 3 + count * ROW + BAR + 4 }
}

/** Small words on a patch of paper, so that no line runs through them. */
function onPatch(x: number, baseline: number, text: string): string {
  const patch = rect({ x: x - 1, y: baseline - 6.5, width: monoWidth(text, TEXT) + 2, height: 8 }, { class: 'halo' })
  return patch + label(x, baseline, text, { class: 'small' })
}

function textSpan(from: number, text: string): { from: number; to: number; text: string } {
  const width = monoWidth(text, TEXT)
  const left = Math.min(from, WIDTH - RIGHT - width)
  return { from: left, to: left + width, text }
}

/** A long name breaks at a space into two lines; what is still too long runs on, since a name is never cut. */
function laneName(name: string): string[] {
  const most = 25
  if (name.length <= most) return [name]
  const cut = name.lastIndexOf(' ', most)
  return cut > 0 ? [name.slice(0, cut), name.slice(cut + 1)] : [name]
}
