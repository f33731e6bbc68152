import type { State } from '../binder/blocks.ts'
import { element } from './svg.ts'

/** Side of a shape in its own units. */
export const STATE_SIDE = 12

const OUTER = 'M0 0H12V12H0Z'
const INNER = 'M1.6 1.6V10.4H10.4V1.6Z'

/**
 * Four squares that differ in grey and at a glance: full, half full, crossed out, empty. Each is one path, so that the page's script can
 * put one in the place of another.
 */
const PATHS: Readonly<Record<State, string>> = {
  good: OUTER,
  soon: `${OUTER}M1.6 1.6V10.4L10.4 1.6Z`,
  bad: `${OUTER}M3.4 1.9L1.9 3.4 4.5 6 1.9 8.6 3.4 10.1 6 7.5 8.6 10.1 10.1 8.6 7.5 6 10.1 3.4 8.6 1.9 6 4.5Z`,
  unknown: `${OUTER}${INNER}`
}

export function statePath(state: State): string {
  return PATHS[state]
}

export const STATE_PATHS = PATHS

/** The shape beside a word of state. It says nothing to a screen reader: the word does. */
export function stateShape(state: State): string {
  const path = element('path', { d: PATHS[state], 'fill-rule': 'evenodd' })
  return element(
    'svg',
    { class: 'state-shape', viewBox: `0 0 ${STATE_SIDE} ${STATE_SIDE}`, 'aria-hidden': 'true' },
    path
  )
}
