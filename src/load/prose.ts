import MarkdownIt from 'markdown-it'
import type { ProseSection } from '../model/site.ts'
import type { FrontMatter } from './front-matter.ts'

export interface PlacedSection extends ProseSection {
  /** Line of the file on which it starts. */
  readonly line: number
}

const markdown = new MarkdownIt()

/**
 * The prose below the keys, cut at its headings of the first two levels, or of the highest level there is. What stands before the first has
 * no heading. A "#" inside a block of code is no heading.
 */
export function proseOf({ body, bodyLine, lines }: FrontMatter): PlacedSection[] {
  const unified = body.replaceAll('\r\n', '\n')
  const text = unified.split('\n')
  const headings = headingsOf(unified)
  const highest = headings.reduce((least, { level }) => Math.min(least, level), 6)
  const deepest = headings.length > 0 ? Math.max(2, highest) : 2
  const cuts = headings.filter(heading => heading.level <= deepest)
  const starts = [{ heading: '', start: 0, textStart: 0 }, ...cuts]
  return starts
    .map(({ heading, start, textStart }, index) => ({
      heading,
      line: bodyLine + start,
      markdown: text
        .slice(textStart, starts[index + 1]?.start)
        .join('\n')
        .trim()
    }))
    .filter(section => section.heading !== '' || section.markdown !== '')
    .map((section, index) => ({ ...section, at: { file: lines.file, path: ['prose', index] } }))
}

interface Heading {
  readonly level: number
  readonly heading: string
  readonly start: number
  readonly textStart: number
}

function headingsOf(body: string): Heading[] {
  const tokens = markdown.parse(body, {})
  return tokens.flatMap((token, index) => {
    if (token.type !== 'heading_open' || token.level !== 0 || !token.map) return []
    const [start, textStart] = token.map
    return [{ level: Number(token.tag.slice(1)), heading: tokens[index + 1]?.content.trim() ?? '', start, textStart }]
  })
}
