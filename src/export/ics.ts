/** A line of a calendar before it is folded: a name with its parameters, and text that is escaped or a value that is not. */
export type CalendarLine = readonly [name: string, value: string, kind?: 'text']

/** Longest line of RFC 5545, section 3.1, in octets, without its line end. */
const MOST_OCTETS = 75

/** Lines folded by octets, never inside a character, with CRLF ends (RFC 5545, sections 3.1 and 3.3.11). */
export function calendarText(lines: readonly CalendarLine[]): string {
  return lines
    .map(([name, value, kind]) => `${folded(`${name}:${kind === 'text' ? escaped(value) : value}`)}\r\n`)
    .join('')
}

function escaped(text: string): string {
  return text
    .replace(/\r\n|\r/gu, '\n')
    .replace(/(?!\n)\p{Cc}/gu, ' ')
    .replace(/[\\;,]/gu, String.raw`\$&`)
    .replaceAll('\n', String.raw`\n`)
}

function folded(line: string): string {
  if (line.length * MOST_OCTETS_A_UNIT <= MOST_OCTETS) return line
  let text = ''
  let octets = 0
  for (const letter of line) {
    const width = octetsOf(letter.codePointAt(0) ?? 0)
    if (octets + width > MOST_OCTETS) {
      text += '\r\n '
      octets = 1
    }
    text += letter
    octets += width
  }
  return text
}

/** A unit of UTF-16 is three octets of UTF-8 at most. */
const MOST_OCTETS_A_UNIT = 3

/** Of a character in UTF-8 (RFC 3629, section 3). */
function octetsOf(codePoint: number): number {
  if (codePoint < 0x80) return 1
  if (codePoint < 0x800) return 2
  return codePoint < 0x10000 ? 3 : 4
}
