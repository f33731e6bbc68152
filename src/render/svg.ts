/** Small pieces of SVG text. Coordinates are rounded to a hundredth, so that the same figure gives the same bytes. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export type Attributes = Readonly<Record<string, string | number | undefined>>

export function escapeXml(text: string): string {
  return text.replace(/[&<>"']/gu, character => `&#${character.codePointAt(0)};`)
}

export function rounded(value: number): string {
  const text = (Math.round(value * 100) / 100).toString()
  return text === '-0' ? '0' : text
}

/** `element('rect', { x: 1 })`; an attribute that is undefined is left out. */
export function element(name: string, attributes: Attributes, inner = ''): string {
  let written = ''
  for (const [key, value] of Object.entries(attributes))
    if (value !== undefined) written += ` ${key}="${typeof value === 'number' ? rounded(value) : escapeXml(value)}"`
  return inner === '' ? `<${name}${written}/>` : `<${name}${written}>${inner}</${name}>`
}

export function rect({ x, y, width, height }: Box, attributes: Attributes = {}): string {
  return element('rect', { x, y, width, height, ...attributes })
}

export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element('path', { d: `M${rounded(x1)} ${rounded(y1)}L${rounded(x2)} ${rounded(y2)}`, ...attributes })
}

export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element('text', { x, y, ...attributes }, escapeXml(text))
}

/** A figure that scales to its column. Screen readers get the title, sighted readers the caption. */
export function figure(width: number, height: number, title: string, inner: string): string {
  const viewBox = `0 0 ${rounded(width)} ${rounded(height)}`
  return element(
    'svg',
    { class: 'figure', viewBox, role: 'img', 'aria-label': title, xmlns: 'http://www.w3.org/2000/svg' },
    inner
  )
}

/**
 * Diagonals across a box, clipped to it by arithmetic. A pattern element would need an id, and ids must be unique in a page.
 * `down` leans them the other way.
 */
export function hatch({ x, y, width, height }: Box, gap: number, attributes: Attributes = {}, down = false): string {
  const parts: string[] = []
  for (let offset = gap / 2; offset < width + height; offset += gap) {
    const [startX, startY] = offset <= height ? [0, height - offset] : [offset - height, 0]
    const [endX, endY] = offset <= width ? [offset, height] : [width, height + width - offset]
    const flip = (value: number) => (down ? height - value : value)
    parts.push(`M${rounded(x + startX)} ${rounded(y + flip(startY))}L${rounded(x + endX)} ${rounded(y + flip(endY))}`)
  }
  return parts.length === 0 ? '' : element('path', { d: parts.join(''), fill: 'none', ...attributes })
}

/** Width of text in the monospaced cut, where every letter is 0.6 em wide. */
export function monoWidth(text: string, size: number): number {
  return [...text].length * 0.6 * size
}

/** Puts each span in the first row where it does not meet an earlier one; hands back the row of each. */
export function stack(spans: readonly { readonly from: number; readonly to: number }[], gap: number): number[] {
  const ends: number[] = []
  return spans.map(({ from, to }) => {
    const free = ends.findIndex(end => end + gap <= from)
    const row = free < 0 ? ends.length : free
    ends[row] = to
    return row
  })
}
