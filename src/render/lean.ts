/** Where the next tag opens a block or the parent ends, a line end before it never shows. */
const BEFORE_BLOCKS =
  /\s*\n\s*(?=<\/?(?:li|dt|dd|div|dl|ul|ol|p|h2|h3|section|details|summary|table|thead|tbody|tr|th|td|form|fieldset|label)\b)/gu
/** End tags that HTML lets a page leave out, since what follows closes them (WHATWG HTML, 13.1.2.4, optional tags). */
const OPTIONAL_ENDS = /<\/(?:li|dt|dd|td|th|tr)>/gu
const OPTIONAL_P = /<\/p>(?=<(?:p|ul|ol|dl|div|details|section|table|h2|h3|form)\b|<\/(?:div|section|details)>)/gu
/** A value without blanks and without signs of its own needs no quotes. Ids and links keep theirs, so that they are easily found. */
const PLAIN_VALUE = / ((?!(?:id|href|src)=)[\w-]+)="([\w#./:+-]*[\w-])"(?=[ >])/gu

/**
 * Markup that says the same and weighs less: a box page is read where there is little signal. For markup of the templates, in which text
 * is escaped, so that none of this can stand in a person's words; not for pages with `pre` text.
 */
export function lean(html: string): string {
  return String(html)
    .replace(BEFORE_BLOCKS, '')
    .replace(OPTIONAL_P, '')
    .replace(OPTIONAL_ENDS, '')
    .replace(PLAIN_VALUE, ' $1=$2')
}
