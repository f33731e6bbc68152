/**
 * A text for a terminal: signs that command it (colors, jumps, titles, bells) or turn the order of reading stand as their numbers, `\u001b`,
 * since a site file may hold what a stranger wrote. Line ends and tabs stay. Within JSON the numbers mean the same signs as before.
 */
export function harmless(text: string): string {
  return text.replace(COMMANDS, sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

/** One sign for one, so that what stands under a line stays under it. */
export function blotted(text: string): string {
  return text.replaceAll('\t', ' ').replace(COMMANDS, '\ufffd')
}

/** Control signs (Unicode Cc) but line end and tab; embeddings, overrides and isolates of Unicode Standard Annex #9. */
const COMMANDS = /(?![\n\t])[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu
