/** Classes that a script puts together from parts, by how they begin. */
const MADE_BY_SCRIPT = /^state-/u

/** A rule, or an at-rule with the rules inside it. */
type Rule =
  | { readonly selectors: readonly Selector[]; readonly body: string }
  | { readonly head: string; readonly rules: readonly Rule[] }
  | { readonly whole: string }

interface Selector {
  readonly text: string
  /** Classes and ids in it. */
  readonly names: readonly string[]
}

/** Sheets taken apart; a build has a handful, each for thousands of pages. */
const taken = new Map<string, readonly Rule[]>()
const MOST_TAKEN = 8

/**
 * A small style sheet without the rules whose classes and ids stand neither in the page nor in its scripts. For sheets that a minifier wrote:
 * no comments, one nesting level of at-rules.
 */
export function pruneCss(css: string, page: string): string {
  return shortNames(kept(rulesOf(css), usedIn(page)).trim())
}

/**
 * The same in two: what the top of a page needs on a screen, and the rest, for where the top ends. On a thin line the top is then seen before
 * the whole sheet is there. Each keeps the order of the sheet; print comes last.
 */
export function pruneInTwo(css: string, page: string, top: string): readonly [first: string, rest: string] {
  const [inPage, inTop] = [usedIn(page), usedIn(top)]
  const rules = rulesOf(css)
  const screen = rules.filter(rule => !isPrint(rule))
  const first = kept(screen, inTop)
  const rest = kept(
    screen.filter(rule => !('whole' in rule)),
    selector => inPage(selector) && !inTop(selector)
  )
  const [one = '', two = ''] = shortNames(`${first}${PART}${rest}${kept(rules.filter(isPrint), inPage)}`).split(PART)
  return [one, two]
}

const PART = '\u0000'

const isPrint = (rule: Rule): boolean => 'head' in rule && rule.head.includes('print')

type IsUsed = (selector: Selector) => boolean

function usedIn(page: string): IsUsed {
  const names = new Set(page.match(/[\w-]+/gu))
  return selector => selector.names.every(name => MADE_BY_SCRIPT.test(name) || names.has(name))
}

function rulesOf(css: string): readonly Rule[] {
  const known = taken.get(css)
  if (known) return known
  if (taken.size >= MOST_TAKEN) taken.clear()
  const rules = takenApart(css)
  taken.set(css, rules)
  return rules
}

function takenApart(css: string): Rule[] {
  const rules: Rule[] = []
  for (let at = 0; at < css.length;) {
    const open = css.indexOf('{', at)
    if (open < 0) return rules
    const close = closing(css, open)
    const head = css.slice(at, open).trim()
    const body = css.slice(open + 1, close)
    if (head.startsWith('@media')) rules.push({ head, rules: takenApart(body) })
    else if (head.startsWith('@')) rules.push({ whole: `${head}{${body}}` })
    else rules.push({ selectors: selectors(head).map(text => ({ text, names: namesOf(text) })), body })
    at = close + 1
  }
  return rules
}

function kept(rules: readonly Rule[], isUsed: IsUsed): string {
  return rules.map(rule => keptRule(rule, isUsed)).join('')
}

function keptRule(rule: Rule, isUsed: IsUsed): string {
  if ('whole' in rule) return rule.whole
  if ('rules' in rule) {
    const inner = kept(rule.rules, isUsed)
    return inner ? `${rule.head}{${inner}}` : ''
  }
  const used = rule.selectors.filter(isUsed)
  return used.length > 0 ? `${used.map(({ text }) => text).join(',')}{${rule.body}}` : ''
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
