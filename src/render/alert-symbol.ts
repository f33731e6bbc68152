import { element } from './svg.ts'

/** A triangle with a mark of exclamation cut out of it, drawn for this project; its corners are cut as those of a tag plate. */
const ART = 'M10.6 1h2.8l10.1 17.6-1.4 2.4H1.9L.5 18.6zM10.7 7l.4 7h1.8l.4-7zm.1 8.6V18h2.4v-2.4z'

const VIEW = '0 0 24 22'

export function alertSymbol(): string {
  const path = element('path', { d: ART, 'fill-rule': 'evenodd' })
  return element('svg', { class: 'alert', viewBox: VIEW, 'aria-hidden': 'true' }, path)
}

/**
 * Diagonal stripes behind a signal word, broad or narrow. A dashed line, slanted: it stays a drawing in print, where a patterned background
 * would become a picture of half a megabyte.
 */
export function signalStripes(broad: boolean): string {
  const dash = broad ? '10 10' : '2.5 7.5'
  const path = element('path', { d: 'M0 10H1600', 'stroke-dasharray': dash, transform: 'skewX(-45)' })
  const box = { class: 'stripes', viewBox: '0 0 800 20', preserveAspectRatio: 'xMinYMid slice', 'aria-hidden': 'true' }
  return element('svg', box, path)
}
