import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { FONT_FACES, MONO_FAMILY, SYMBOL_FAMILY, TEXT_FAMILY, fontCss } from '../../src/render/font-faces.ts'
import type { FontFace } from '../../src/render/font-faces.ts'
import { PAGES, renderPage } from '../look/render-all.ts'
import { textOf } from '../look/text-of.ts'
import { lettersOf } from './woff2-letters.ts'

const letters = new Map(FONT_FACES.map(face => [face.file, lettersOf(face.file)]))

const asksFor = (face: FontFace, code: number): boolean => face.range.some(([from, to]) => code >= from && code <= to)

/** As a browser looks for a letter: faces of the family whose range has it, then the symbols. */
function missingIn(family: string, weight: number, text: string): string[] {
  const faces = FONT_FACES.filter(
    face =>
      (face.family === family || face.family === SYMBOL_FAMILY) && face.weight === weight && face.style === 'normal'
  )
  const has = (code: number) => faces.some(face => asksFor(face, code) && letters.get(face.file)?.has(code))
  return [...new Set(text)]
    .filter(letter => !/\s/u.test(letter) || letter === '\u00a0')
    .filter(letter => !has(letter.codePointAt(0) ?? 0))
}

const MUST = 'Ω µ μ ² ³ ° × − – — · ½ ¼ ¾ ≤ ≥ ≈ √ → ← ↑ ↓ ☐ ▲ ■ ″ ′ ± ÷ % ‘ ’ “ ” … \u00a0 \u2011 Δ ρ η α π ₂ ⁻ § €'

describe('the fonts of a print', () => {
  it.each([
    [TEXT_FAMILY, 400],
    [TEXT_FAMILY, 700],
    [MONO_FAMILY, 400],
    [MONO_FAMILY, 700]
  ])('%s %i has every letter and sign of the trade', (family, weight) => {
    expect(missingIn(family, weight, MUST)).toEqual([])
  })

  it('a letter that no face has is seen as missing', () => {
    expect(missingIn(TEXT_FAMILY, 400, 'Ω漢')).toEqual(['漢'])
  })

  it('names of Europe are covered', () => {
    expect(missingIn(TEXT_FAMILY, 400, 'Łódź Århus Žilina Çeşme Győr Đurić Ångström')).toEqual([])
  })

  it.each(PAGES.filter(({ kind }) => kind === 'print'))('have every letter of $name', ({ template, view }) => {
    expect(missingIn(TEXT_FAMILY, 400, textOf(renderPage(template, view)))).toEqual([])
  })

  it('have every letter of the words that the outputs are made from', () => {
    const folder = join(import.meta.dirname, '../../src/words/en-US')
    const text = readdirSync(folder)
      .map(file => readFileSync(join(folder, file), 'utf8'))
      .join('')
    expect(missingIn(TEXT_FAMILY, 400, text)).toEqual([])
  })

  it('stand inside the page as data, and are not heavy', () => {
    expect(fontCss()).not.toMatch(/url\((?!data:font\/woff2;base64,)/u)
    expect(fontCss().match(/@font-face/gu)).toHaveLength(FONT_FACES.length)
    expect(fontCss().length).toBeLessThan(220_000)
  })
})
