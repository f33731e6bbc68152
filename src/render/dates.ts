import { escapeXml } from './svg.ts'

/** Text as HTML whose dates do not break at their hyphens: "2026-04-02" on one line. */
export function dates(text: string): string {
  return escapeXml(text).replace(/\d{4}-\d{2}-\d{2}/gu, '<span class="date">$&</span>')
}
