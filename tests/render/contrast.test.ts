import { describe, expect, it } from 'vitest'
import { css, readSheet } from '../../src/render/styles.ts'

/** Relative luminance. WCAG 2.2, definitions, relative luminance. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(at => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/** Contrast ratio. WCAG 2.2, definitions, contrast ratio. */
function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (light + 0.05) / (dark + 0.05)
}

const tokens = Object.fromEntries(
  [...readSheet('tokens').matchAll(/--([a-z]+):\s*(#[0-9a-f]{6})/gu)].map(([, name, value]) => [name, value ?? ''])
)
const token = (name: string): string => tokens[name] ?? ''

describe('contrast', () => {
  it('is computed as the standard computes it: black on white is 21, #767676 on white is 4.54', () => {
    expect(contrast('#000000', '#ffffff')).toBe(21)
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
  })

  const pairs = ['ink', 'quiet', 'accent'].flatMap(ink =>
    ['paper', 'tint', 'white'].map(paper => [ink, paper] as const)
  )
  it.each([...pairs, ['white', 'ink'] as const, ['white', 'accent'] as const])(
    'of %s on %s is 7 : 1 or more',
    (ink, paper) => {
      expect(contrast(token(ink), token(paper))).toBeGreaterThanOrEqual(7)
    }
  )

  it('of ruled lines on paper is 3 : 1 or more', () => {
    for (const paper of ['paper', 'white']) expect(contrast(token('line'), token(paper))).toBeGreaterThanOrEqual(3)
  })

  it('holds for all: no sheet brings a colour that is not among the tokens', () => {
    const known = new Set(Object.values(tokens))
    for (const sheet of ['base', 'blocks', 'paper', 'label', 'screen', 'box', 'entry']) {
      const colours = readSheet(sheet).match(/#[0-9a-f]{3,8}\b/giu) ?? []
      expect(colours.filter(colour => !known.has(colour))).toEqual([])
      expect(readSheet(sheet)).not.toMatch(/rgba?\(|hsla?\(|opacity|gradient\(|border-radius:\s*[^0\s;]/u)
    }
  })

  it('every kind of page gets its styles as one small text', () => {
    for (const name of ['paper', 'labels', 'office', 'box', 'entry'] as const) {
      expect(css(name)).toContain('--accent:')
      expect(css(name)).not.toContain('\n\n')
      // Paper is read from the disk; the others go over a phone's network.
      expect(css(name).length).toBeLessThan(name === 'paper' ? 30_000 : 20_000)
    }
  })
})
