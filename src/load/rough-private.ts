import type { SourceText } from './loaded.ts'

const KEY = /^(\s*(?:-\s+)*)(?:.*[{,]\s*)?["']?private["']?\s*:(.*)$/u
const PERSONAL = /\b(?:phone|email)\s*:\s*("[^"]*"|'[^']*'|[^,}\]]+)/gu

/**
 * What a file that cannot be understood may hold in private: each line at a `private:` key and below it, by its indent, and phones and mail
 * addresses that no line calls public. Too much rather than too little: it is only kept out of messages.
 */
export function roughPrivateWords({ text }: Pick<SourceText, 'text'>): string[] {
  const words: string[] = []
  let indent: number | undefined
  for (const line of text.split(/\r\n|\r|\n/u)) {
    const own = line.length - line.trimStart().length
    if (indent !== undefined && line.trim() !== '' && own <= indent) indent = undefined
    if (indent !== undefined) words.push(...valuesOf(line))
    const match = KEY.exec(line)
    if (match && indent === undefined) {
      indent = match[1]?.length ?? 0
      words.push(...valuesOf(match[2] ?? ''))
    }
    if (!/\bpublic\s*:\s*(?:yes|true)/iu.test(line))
      words.push(...[...line.matchAll(PERSONAL)].map(([, value = '']) => bare(value)))
  }
  return [...new Set(words.filter(word => word !== ''))]
}

/** "  gate: { code: "0391", keys: hook 4 }": the values, and what stands there as a whole. */
function valuesOf(line: string): string[] {
  const value = line.replace(/^\s*(?:[-?]\s+)*(?:["']?[\w -]+["']?\s*:(?=\s|$))?/u, '')
  const parts = value.split(/[{}[\],]|\b[\w-]+\s*:\s/u)
  return [value, ...parts].map(bare)
}

/** Without the signs that YAML puts around a text. */
const bare = (text: string): string => text.trim().replace(/^[\s"'|>@*&!-]+|["'\s]+$/gu, '')
