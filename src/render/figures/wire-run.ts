import type { FigureSpec } from '../../binder/blocks.ts'
import { pageWords } from '../../words/en-US/pages.ts'
import { statePath } from '../state-shape.ts'
import { element, figure, label, line, monoWidth, rect, rounded } from '../svg.ts'

type WireRun = Extract<FigureSpec, { figure: 'wire-run' }>

const WIDTH = 480
const TERMINAL = 64
const Y = 30
const BELOW = Y + 30
/** Size of the small letters in the style sheet. */
const SMALL = 7
const STYLES = ['wire', 'wire dashed', 'wire dotted'] as const

/**
 * A pair of wires from controller to coil, each segment as long as its share. Splices are counted beside the drawing and not placed on
 * it: where each lies is on the record drawing.
 */
export function wireRunFigure(run: WireRun): string {
  const total = run.segments.reduce((sum, { share }) => sum + share, 0) || 1
  const span = WIDTH - 2 * TERMINAL
  let x = TERMINAL
  const segments = run.segments.map(({ label: text, share }, index) => {
    const [from, to] = [x, x + (share / total) * span]
    x = to
    return drawSegment(from, to, text, index)
  })
  const words = pageWords.blocks
  const splices = Array.from({ length: Math.min(run.splices, 12) }, (_, index) =>
    splice(TERMINAL + 6 + index * 11, BELOW)
  )
  const count = label(TERMINAL + Math.max(splices.length, 0) * 11 + 4, BELOW + 2.5, words.splices(run.splices), {
    class: 'small'
  })
  const state = element('path', {
    d: statePath(run.state),
    transform: `translate(${WIDTH - 12} ${BELOW - 6})`,
    class: 'state'
  })
  const verdict = label(WIDTH - 16, BELOW + 3, run.verdict, { class: 'number', 'text-anchor': 'end' })
  const inner =
    terminal(0, run.from) + segments.join('') + terminal(WIDTH - TERMINAL, run.to) + splices.join('') + count + verdict
  return figure(WIDTH, BELOW + 10, run.title, inner + state)
}

function drawSegment(from: number, to: number, text: string, index: number): string {
  const style = STYLES[index % STYLES.length]
  const pair = line(from, Y - 3, to, Y - 3, { class: style }) + line(from, Y + 3, to, Y + 3, { class: style })
  const joint = index > 0 ? line(from, Y - 12, from, Y + 12, { class: 'joint' }) : ''
  const above = index % 2 === 0
  // Between the terminals, however short its segment is.
  const half = monoWidth(text, SMALL) / 2 + 2
  const middle = Math.min(Math.max((from + to) / 2, TERMINAL + half), WIDTH - TERMINAL - half)
  const anchor = label(middle, above ? Y - 12 : Y + 20, text, { class: 'small', 'text-anchor': 'middle' })
  return pair + joint + anchor
}

function terminal(x: number, name: string): string {
  const box = { x: x + 1, y: Y - 15, width: TERMINAL - 2, height: 30 }
  return (
    rect(box, { class: 'terminal' }) +
    label(x + TERMINAL / 2, Y + 3.5, name, { class: 'terminal-name', 'text-anchor': 'middle' })
  )
}

function splice(x: number, y: number): string {
  const d = `M${rounded(x - 4)} ${rounded(y)}l4 -4 4 4 -4 4z`
  return element('path', { d, class: 'splice' })
}
