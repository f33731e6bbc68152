import { squeezed } from './binder-text.ts'
import type { BinderText } from './binder-text.ts'
import type { Requirement } from './requirements.ts'

export interface Score {
  readonly n: number
  readonly points: 0 | 1 | 2
  /** What is silent, or which gap is listed. */
  readonly why: string
}

const MISSING = 'What is not supplied'

/** What the finished binder prints of one line: 2 from data or an attachment, 1 as not supplied and listed, 0 nothing. */
export function scoreOf({ n, in: where, says, gaps = [] }: Requirement, text: BinderText): Score {
  const own = where.map(title => sectionText(text, title)).join('|')
  const silent = says.find(alternatives => !alternatives.split('|').some(one => own.includes(squeezed(one))))
  if (silent !== undefined) return { n, points: 0, why: `silent: ${silent}` }
  const listed = where.flatMap(title => gapsListed(text, title)).find(gap => gaps.some(name => isGap(gap, name)))
  return listed === undefined ? { n, points: 2, why: '' } : { n, points: 1, why: listed }
}

/** Data of the fully supplied site that must be printed and is not. */
export function notPrinted({ in: where, demo = [] }: Requirement, text: BinderText): string[] {
  const own = where.map(title => sectionText(text, title)).join('|')
  return demo.filter(alternatives => !alternatives.split('|').some(one => own.includes(squeezed(one))))
}

/** "coil (k1/4)" is a gap of "Coil"; "the whole section" of itself. */
function isGap(listed: string, name: string): boolean {
  const wanted = squeezed(name)
  return listed === wanted || listed.startsWith(`${wanted}(`)
}

export function sectionText(text: BinderText, title: string): string {
  if (title === '(cover)') return [...text.sections.values()][0] ?? ''
  const found = [...text.sections].find(([name]) => squeezed(name) === squeezed(title))
  return found?.[1] ?? ''
}

/** What the list of gaps says of a section. */
export function gapsListed(text: BinderText, title: string): string[] {
  const list = rest(sectionText(text, MISSING), 'partwhatismissing')
  const heads = [...text.sections.keys()].map(squeezed)
  const after = rest(list, squeezed(title))
  if (after === '') return []
  // The next section in the order of the binder that has gaps ends it.
  const following = heads.slice(heads.indexOf(squeezed(title)) + 1)
  const ends = following.map(head => after.indexOf(head)).filter(at => at > 0)
  return after.slice(0, ends.length === 0 ? undefined : Math.min(...ends)).split(';')
}

function rest(text: string, after: string): string {
  const at = text.indexOf(after)
  return at === -1 ? '' : text.slice(at + after.length)
}
