import type { PlanFigure } from '../../binder/figures/plan.ts'
import { textEm } from '../letter-widths.ts'
import { element, label, line, rect, rounded } from '../svg.ts'
import type { Box } from '../svg.ts'
import { patternFill } from './plan-pattern.ts'
import { asideMark, planStroke, planSymbol } from './plan-symbols.ts'

const ROW_MM = 4.6
const COLUMN_MM = 58
/** Sizes of letters, mm. */
const SMALL_MM = 2.5
const SWATCH = { width: 9, height: 3.6 } as const
/** From the sign to its words, and from them to the next column, mm. */
const GAP_MM = 2

/** `aside`: whether a symbol is drawn beside its place. Words on the sheet beside or below the map: what the signs mean, and the title block in the corner. */
export function planLegend(plan: PlanFigure, aside: boolean): string {
  const { legend, titleBlock, map, widthMm, heightMm } = plan
  if (!legend || !titleBlock) return ''
  const turned = map.widthMm < widthMm - 10
  const panel: Box = turned
    ? { x: map.xMm + map.widthMm + 3, y: 0, width: widthMm - map.xMm - map.widthMm - 3, height: heightMm }
    : { x: 0, y: map.yMm + map.heightMm + 2, width: widthMm, height: heightMm - map.yMm - map.heightMm - 2 }
  const blockHigh = 9 + titleBlock.rows.length * 4.5
  const block: Box = turned
    ? { x: panel.x, y: heightMm - blockHigh, width: panel.width, height: blockHigh }
    : { x: widthMm - COLUMN_MM, y: panel.y, width: COLUMN_MM, height: blockHigh }
  const room: Box = turned
    ? { ...panel, height: panel.height - blockHigh - 3 }
    : { ...panel, width: panel.width - COLUMN_MM - 3 }
  return rows(plan, room, aside) + titleOf(titleBlock, block)
}

/** The entries in columns, downwards; closer together where they are many. */
function rows({ legend }: PlanFigure, room: Box, aside: boolean): string {
  if (!legend) return ''
  const entries = [
    ...legend.areas.map(({ pattern, text }) => ({ draw: (box: Box) => swatch(box, pattern), text })),
    ...legend.symbols
      .filter(one => aside || one.symbol !== 'aside')
      .map(({ symbol, text }) => ({
        draw: (box: Box) => {
          const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
          if (symbol === 'aside') return asideMark({ x: x + 3, y: y - 0.6 }, { x: x - 3, y: y + 0.6 })
          if (symbol !== 'tie') return planSymbol(symbol, { x, y })
          const tick = (at: number) => line(at, y - 1.1, at, y + 1.1, { class: 'plan-tie' })
          return line(box.x, y, box.x + box.width, y, { class: 'plan-tie' }) + tick(box.x) + tick(box.x + box.width)
        },
        text
      })),
    ...legend.lines.map(({ kind, text }) => ({
      draw: ({ x, y, width, height }: Box) => planStroke(kind, `M${x} ${y + height / 2}H${x + width}`),
      text
    }))
  ]
  const columns = Math.max(1, Math.floor((room.width + 4) / (COLUMN_MM - 4)))
  const perColumn = Math.ceil(entries.length / columns)
  const step = Math.min(ROW_MM + 0.6, (room.height - 1) / Math.max(1, perColumn + legend.notes.length))
  const first =
    columns === 2
      ? firstOfTwo(
          entries.map(one => one.text),
          perColumn,
          room.width
        )
      : room.width / columns
  const drawn = entries.map(({ draw, text }, index) => {
    const column = Math.floor(index / perColumn)
    const x = room.x + column * first
    const wide = column === 1 && columns === 2 ? room.width - first : first
    const y = room.y + (index % perColumn) * step
    return (
      draw({ x, y: y + 0.4, ...SWATCH }) +
      label(x + SWATCH.width + GAP_MM, y + 3.2, clipped(text, wide - SWATCH.width - 2 * GAP_MM), {
        class: 'plan-small'
      })
    )
  })
  const notes = legend.notes.map((note, index) =>
    label(room.x, room.y + (perColumn + index) * step + 3.4, clipped(note, room.width), {
      class: 'plan-small'
    })
  )
  return drawn.join('') + notes.join('')
}

/** The table below says it whole. */
function clipped(text: string, mostMm: number, size = SMALL_MM): string {
  if (textEm(text) * size <= mostMm) return text
  const letters = [...text]
  let count = letters.length
  const kept = () => `${letters.slice(0, count).join('').trimEnd()}…`
  while (count > 0 && textEm(kept()) * size > mostMm) count -= 1
  return kept()
}

/** The first of two columns is as wide as its words, as far as the second leaves room. */
function firstOfTwo(texts: readonly string[], perColumn: number, width: number): number {
  const needed = (some: readonly string[]) =>
    Math.max(0, ...some.map(text => textEm(text) * SMALL_MM)) + SWATCH.width + 2 * GAP_MM
  const [first, second] = [needed(texts.slice(0, perColumn)), needed(texts.slice(perColumn))]
  return Math.max(width / 2, Math.min(first + GAP_MM, width - second))
}

/** A pattern alone, beside the words of a row. */
export function patternSvg(pattern: number): string {
  const box = { x: 0.3, y: 0.3, width: 13.4, height: 6.4 }
  return element(
    'svg',
    { class: 'figure plan-swatch', viewBox: '0 0 14 7', 'aria-hidden': 'true', xmlns: 'http://www.w3.org/2000/svg' },
    swatch(box, pattern)
  )
}

/** Drawn from a corner of its own, so that each shows every stroke of its pattern, wherever it stands. */
function swatch(box: Box, pattern: number): string {
  const { x, y, width, height } = box
  const shape = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height }
  ]
  const moved = element('g', { transform: `translate(${rounded(x)} ${rounded(y)})` }, patternFill(shape, pattern))
  return moved + rect(box, { class: 'plan-outline' })
}

function titleOf({ heading, rows: facts }: NonNullable<PlanFigure['titleBlock']>, box: Box): string {
  const edge = 2.4
  const { x, y, width, height } = box
  const plate = `M${x + edge} ${y}H${x + width}V${y + height - edge}L${x + width - edge} ${y + height}H${x}V${y + edge}Z`
  return (
    element('path', { d: plate, class: 'plan-plate' }) +
    label(x + 3, y + 6, heading, { class: 'plan-heading' }) +
    facts
      .map(({ label: name, value }, index) => {
        const at = y + 11.4 + index * 4.5
        return (
          label(x + 3, at, name, { class: 'plan-small' }) +
          label(x + 19, at, clipped(value, width - 21), { class: 'plan-value' })
        )
      })
      .join('')
  )
}
