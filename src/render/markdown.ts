import MarkdownIt from 'markdown-it'

/** Headings of a writer's prose stand below the section's own two levels. */
const HEADINGS_BELOW = 2
const LOWEST = 6

const parser = new MarkdownIt({ html: false, linkify: false, typographer: false, breaks: false })
parser.disable('image')
parser.core.ruler.push('lower-headings', state => {
  for (const token of state.tokens) {
    if (token.type !== 'heading_open' && token.type !== 'heading_close') continue
    token.tag = `h${Math.min(LOWEST, Number(token.tag.slice(1)) + HEADINGS_BELOW)}`
  }
})

/**
 * The writer's Markdown as HTML. Raw HTML is shown as written, pictures are left out (a page fetches nothing), braces mean nothing. A link
 * keeps its text; print styles put the address behind it.
 */
export function markdown(text: string): string {
  return parser.render(text)
}
