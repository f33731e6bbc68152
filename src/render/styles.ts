import { readFileSync } from 'node:fs'
import { transformSync } from 'esbuild'

/** The style sheets of a kind of page, in order. Each is one file in templates/css. */
const SHEETS = {
  paper: ['tokens', 'base', 'blocks', 'plan', 'paper'],
  charts: ['charts'],
  labels: ['tokens', 'base', 'label'],
  office: ['tokens', 'base', 'blocks', 'screen'],
  box: ['tokens', 'base', 'box'],
  entry: ['tokens', 'base', 'box', 'entry']
} as const satisfies Record<string, readonly string[]>

export type StyleName = keyof typeof SHEETS

const made = new Map<StyleName, string>()

/** The CSS of a kind of page as one small text, to stand inside the page. */
export function css(name: StyleName): string {
  const known = made.get(name)
  if (known !== undefined) return known
  const text = SHEETS[name].map(readSheet).join('\n')
  const small = transformSync(text, {
    loader: 'css',
    minify: true,
    target: ['chrome100', 'safari14', 'firefox100']
  }).code
  made.set(name, small)
  return small
}

export function readSheet(sheet: string): string {
  return readFileSync(new URL(`../../templates/css/${sheet}.css`, import.meta.url), 'utf8')
}

/** Text inside the quotes of a CSS string: the running foot of a page. */
export function cssString(text: string): string {
  return text.replace(/[\\"<>\n\r\f]/gu, character => `\\${character.codePointAt(0)?.toString(16)} `)
}
