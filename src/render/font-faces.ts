import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'

/** A font file of the printed pages and the letters that it is asked for. */
export interface FontFace {
  readonly family: string
  readonly weight: number
  readonly style: 'normal' | 'italic'
  readonly range: readonly (readonly [from: number, to: number])[]
  readonly file: string
}

type Range = FontFace['range']

/** Signs that Atkinson Hyperlegible lacks; they stand in a small font of our own, templates/fonts/README.md. */
const SYMBOLS: Range = [
  [0xb5, 0xb5],
  [0x370, 0x3ff],
  [0x2002, 0x2008],
  [0x200a, 0x200b],
  [0x2010, 0x2011],
  [0x202f, 0x202f],
  [0x2032, 0x2033],
  [0x2060, 0x2060],
  [0x2070, 0x209f],
  [0x215b, 0x215e],
  [0x2190, 0x2193],
  [0x2200, 0x2211],
  [0x2213, 0x2214],
  [0x2216, 0x22ff],
  [0x25a0, 0x25ff],
  [0x2610, 0x2610],
  [0x2713, 0x2717]
]
const LATIN: Range = [
  [0x20, 0x7e],
  [0xa0, 0xb4],
  [0xb6, 0xff],
  [0x131, 0x131],
  [0x152, 0x153],
  [0x2c6, 0x2c6],
  [0x2da, 0x2da],
  [0x2dc, 0x2dc],
  [0x300, 0x308],
  [0x2009, 0x2009],
  [0x2012, 0x202e],
  [0x2039, 0x203a],
  [0x2044, 0x2044],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x2212, 0x2212],
  [0x2215, 0x2215]
]
const LATIN_EXTENDED: Range = [
  [0x100, 0x130],
  [0x132, 0x151],
  [0x154, 0x2bf],
  [0x1e00, 0x1eff],
  [0x2020, 0x2020],
  [0x20a0, 0x20ab]
]

export const TEXT_FAMILY = 'Atkinson Hyperlegible Next'
export const MONO_FAMILY = 'Atkinson Hyperlegible Mono'
export const SYMBOL_FAMILY = 'Underlid Symbols'

const require = createRequire(import.meta.url)

function atkinson(
  cut: 'next' | 'mono',
  part: string,
  range: Range,
  weight: number,
  style: FontFace['style']
): FontFace {
  const name = `atkinson-hyperlegible-${cut}`
  const file = require.resolve(`@fontsource/${name}/files/${name}-${part}-${weight}-${style}.woff2`)
  return { family: cut === 'next' ? TEXT_FAMILY : MONO_FAMILY, weight, style, range, file }
}

function symbols(weight: number): FontFace {
  const file = fileURLToPath(new URL(`../../templates/fonts/underlid-symbols-${weight}.woff2`, import.meta.url))
  return { family: SYMBOL_FAMILY, weight, style: 'normal', range: SYMBOLS, file }
}

export const FONT_FACES: readonly FontFace[] = [
  atkinson('next', 'latin', LATIN, 400, 'normal'),
  atkinson('next', 'latin', LATIN, 400, 'italic'),
  atkinson('next', 'latin', LATIN, 700, 'normal'),
  atkinson('next', 'latin', LATIN, 800, 'normal'),
  atkinson('next', 'latin', LATIN, 800, 'italic'),
  atkinson('next', 'latin-ext', LATIN_EXTENDED, 400, 'normal'),
  atkinson('next', 'latin-ext', LATIN_EXTENDED, 700, 'normal'),
  atkinson('mono', 'latin', LATIN, 400, 'normal'),
  atkinson('mono', 'latin', LATIN, 700, 'normal'),
  atkinson('mono', 'latin-ext', LATIN_EXTENDED, 400, 'normal'),
  symbols(400),
  symbols(700)
]

let embedded: string | undefined

/** Every face of the printed pages, inside the page: a binder looks the same on every machine and asks nobody for a font. */
export function fontCss(): string {
  embedded ??= FONT_FACES.map(faceCss).join('\n')
  return embedded
}

function faceCss({ family, weight, style, range, file }: FontFace): string {
  const data = readFileSync(file).toString('base64')
  const letters = range.map(([from, to]) => `U+${from.toString(16)}-${to.toString(16)}`).join(',')
  return `@font-face{font-family:"${family}";font-weight:${weight};font-style:${style};font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${letters}}`
}
