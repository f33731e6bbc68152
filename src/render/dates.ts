import { escapeXml } from './svg.ts'

/** A date, a name such as MR-01/1, a size such as 1-1/2: what would be read as two things when it is broken at its hyphen. */
const ONE_WORD = /\d{4}-\d{2}-\d{2}|\b\p{Lu}[\p{L}\d]{0,5}-\p{L}{0,2}\d{1,5}(?:\/\d{1,3})?\b|\b\d{1,2}-\d\/\d{1,2}\b/gu

/** Text as HTML whose dates and names do not break at their hyphens: "2026-04-02" on one line. */
export function dates(text: string): string {
  return escapeXml(text).replace(ONE_WORD, '<span class="date">$&</span>')
}
