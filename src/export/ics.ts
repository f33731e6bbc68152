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
  const encoder = new TextEncoder()
  let text = ''
  let octets = 0
  for (const letter of line) {
    const width = encoder.encode(letter).length
    if (octets + width > MOST_OCTETS) {
      text += '\r\n '
      octets = 1
    }
    text += letter
    octets += width
  }
  return text
}
