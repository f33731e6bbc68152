import { element } from './svg.ts'

/** A triangle with a mark of exclamation cut out of it, drawn for this project; its corners are cut as those of a tag plate. */
const TRIANGLE = 'M10.6 1H13.4L23.5 18.6 22.1 21H1.9L0.5 18.6Z'
const MARK = 'M10.7 7H13.3L12.9 14H11.1ZM10.8 15.6H13.2V18H10.8Z'

export function alertSymbol(): string {
  const path = element('path', { d: TRIANGLE + MARK, 'fill-rule': 'evenodd' })
  return element('svg', { class: 'alert', viewBox: '0 0 24 22', 'aria-hidden': 'true', focusable: 'false' }, path)
}
