/**
 * The words of a page as a reader or a program gets them: text, data and attribute values, their escapes undone. What only looks like words is
 * left out: drawings, styles, scripts and their hashes.
 */
export function markupWords(markup: string): string {
  const words = markup
    .replace(/<style[^>]*>.*?<\/style>/gsu, ' ')
    .replace(/<script>.*?<\/script>/gsu, ' ')
    .replace(/'sha256-[^']*'/gu, ' ')
    .replace(DRAWN, ' ')
  return `${unescaped(words)}\n${unescaped(withoutTags(words))}`
}

const DRAWN = /\s(?:d|points|viewBox|transform|x|y|x1|y1|x2|y2|cx|cy|r|width|height)=(?:"[^"]*"|[\d.-]+(?=[\s>]))/gu
/** Tags that part no word: "<b>77</b>19" is read as 7719. */
const WITHIN_A_WORD = /<\/?(?:a|abbr|b|code|em|i|mark|s|small|span|strong|sub|sup|u|wbr|tspan)\b[^>]*>/gu
const SILENT = /[\u00ad\u200b-\u200d\u2060\ufeff]/gu

function withoutTags(markup: string): string {
  return markup.replace(WITHIN_A_WORD, '').replace(/<[^>]*>/gu, ' | ')
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ', shy: '' }

/** Character references of HTML, escapes of JSON and of addresses undone, and signs that are not seen left out. */
function unescaped(text: string): string {
  return text
    .replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/giu, (whole, hex?: string, decimal?: string, name?: string) =>
      name === undefined
        ? letter(hex === undefined ? Number(decimal) : Number.parseInt(hex, 16))
        : (NAMED[name] ?? whole)
    )
    .replace(/\\u([0-9a-f]{4})/giu, (_, hex: string) => letter(Number.parseInt(hex, 16)))
    .replace(/(?:%[0-9a-f]{2})+/giu, decoded)
    .replace(SILENT, '')
}

function letter(code: number): string {
  return code <= 0x10ffff ? String.fromCodePoint(code) : ' '
}

function decoded(octets: string): string {
  try {
    return decodeURIComponent(octets)
  } catch {
    return octets
  }
}
