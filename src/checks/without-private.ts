import { needleIndex } from '../domain/privacy/needle-index.ts'
import { privateNeedles } from '../domain/privacy/needles.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { PrivateWord } from '../model/site.ts'

/**
 * Findings as they may be said aloud: a private word is dotted out of their sentences and of the lines that they show, since logs, tickets and
 * screens go further than the restricted sheet. Nothing moves: each dot stands for one sign.
 */
export function withoutPrivate(findings: readonly Finding[], words: readonly Pick<PrivateWord, 'text'>[]): Finding[] {
  if (words.length === 0) return [...findings]
  const index = needleIndex(words.map(word => word.text))
  const holdsAny = (text: string): boolean => index.wordsIn(text, () => true).length > 0
  const needles = [...new Set(words.flatMap(word => privateNeedles(word.text)))].sort((a, b) => b.length - a.length)
  // Thousands of findings may show one and the same long line.
  const known = new Map<string, string>()
  const bare = (text: string): string => {
    const made = known.get(text) ?? dotted(text, needles, holdsAny)
    known.set(text, made)
    return made
  }
  return findings.map(finding => ({
    ...finding,
    message: bare(finding.message),
    fix: bare(finding.fix),
    place: { ...finding.place, text: bare(finding.place.text) }
  }))
}

function dotted(text: string, needles: readonly string[], holdsAny: (text: string) => boolean): string {
  if (!holdsAny(text)) return text
  const found = needles.reduce((rest, needle) => withDots(rest, needle), text)
  // Spelled in another way: the whole of it, rather than a part too little.
  return holdsAny(found) ? text.replace(/\S/gu, sign => DOT.repeat(sign.length)) : found
}

const DOT = '•'

function withDots(text: string, needle: string): string {
  const small = text.toLowerCase()
  if (small.length !== text.length) return text
  let result = text
  for (let at = small.indexOf(needle); at >= 0; at = small.indexOf(needle, at + needle.length))
    result = result.slice(0, at) + DOT.repeat(needle.length) + result.slice(at + needle.length)
  return result
}
