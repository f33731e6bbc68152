/** Classes that a script puts together from parts, by how they begin. */
const MADE_BY_SCRIPT = /^state-/u

/**
 * A small style sheet without the rules whose classes and ids stand neither in the page nor in its scripts. For sheets that a minifier wrote:
 * no comments, one nesting level of at-rules.
 */
export function pruneCss(css: string, page: string): string {
  const names = new Set(page.match(/[\w-]+/gu))
  return shortNames(pruned(css, name => MADE_BY_SCRIPT.test(name) || names.has(name)).trim())
}

function pruned(css: string, isUsed: (name: string) => boolean): string {
  let kept = ''
  for (let at = 0; at < css.length;) {
    const open = css.indexOf('{', at)
    if (open < 0) return kept
    const close = closing(css, open)
    const head = css.slice(at, open).trim()
    const body = css.slice(open + 1, close)
    if (head.startsWith('@media')) {
      const inner = pruned(body, isUsed)
      kept += inner ? `${head}{${inner}}` : ''
    } else if (head.startsWith('@')) kept += `${head}{${body}}`
    else {
      const used = selectors(head).filter(selector => namesOf(selector).every(isUsed))
      kept += used.length > 0 ? `${used.join(',')}{${body}}` : ''
    }
    at = close + 1
  }
  return kept
}

/** Place of the brace that closes the one at `open`. Braces in quoted text do not count. */
function closing(css: string, open: number): number {
  let depth = 0
  let quote = ''
  for (let at = open; at < css.length; at += 1) {
    const character = css[at] ?? ''
    if (quote) quote = character === quote ? '' : quote
    else if (character === '"' || character === "'") quote = character
    else if (character === '{') depth += 1
    else if (character === '}' && --depth === 0) return at
  }
  return css.length
}

/** Commas inside brackets belong to one selector. */
function selectors(head: string): string[] {
  return head.split(/,(?![^(]*\))/u)
}

function namesOf(selector: string): string[] {
  return [...selector.replace(/:not\([^)]*\)/gu, '').matchAll(/[.#]([\w-]+)/gu)].map(([, name]) => name ?? '')
}

/** Properties of our own by one letter each; those never set in the rest of the sheet go. */
function shortNames(css: string): string {
  const own = [...new Set([...css.matchAll(/--[a-z]+/gu)].map(([name]) => name))]
  const letters = new Map(own.map((name, index) => [name, `--${String.fromCharCode(97 + index)}`]))
  return css.replace(/--[a-z]+/gu, name => (own.length <= 26 ? (letters.get(name) ?? name) : name))
}
