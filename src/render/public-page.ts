import { hashSource } from './page-policy.ts'
import { pruneCss, pruneInTwo } from './prune-css.ts'

const STYLE = /<style>([\s\S]*?)<\/style>/u
/** Where the first sight of a page ends: styles of what follows stand there. */
const BELOW = '<!-- below -->'
/** Scripts that run; data blocks are of another type and run nothing. */
const SCRIPTS = /<script>([\s\S]*?)<\/script>/gu

/**
 * The last touch on a page that anybody can open: only the styles that it uses, and a strict policy that names its own style and scripts by
 * their hashes, so that nothing else can run or be loaded. Files of the same folder may be fetched: the worker, the drawing of a code.
 */
export function publicPage(page: string): string {
  const html = String(page)
  const [, styles = ''] = STYLE.exec(html) ?? []
  const plain = html.replace(STYLE, '')
  const [top = '', below] = plain.split(BELOW)
  const [first, rest = ''] = below === undefined ? [pruneCss(styles, plain)] : pruneInTwo(styles, plain, top)
  const hashes = [first, rest].filter(Boolean).map(hashSource).join(' ')
  const scripts = [...html.matchAll(SCRIPTS)].map(([, script = '']) => hashSource(script))
  return html
    .replace(STYLE, () => `<style>${first}</style>`)
    .replace(BELOW, () => `<style>${rest}</style>`)
    .replace(
      '<meta charset="utf-8">',
      `<meta charset=utf-8><meta http-equiv=Content-Security-Policy content="${policy(hashes, scripts, html)}">`
    )
}

function policy(styles: string, scripts: readonly string[], html: string): string {
  return [
    "default-src 'none'",
    `style-src ${styles}`,
    `script-src ${["'self'", ...scripts].join(' ')}`,
    "img-src 'self' data:",
    "worker-src 'self'",
    // Only a page in several languages asks for another one.
    ...(html.includes('hreflang') ? ["connect-src 'self'"] : []),
    "base-uri 'none'",
    "form-action 'none'"
  ].join(';')
}
