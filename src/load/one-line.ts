/**
 * A text on one line: control characters and line ends are a space, marks that turn the direction of writing or take no room go. What somebody pasted
 * or a device wrote then means in a file, on a page and in a terminal what it says.
 */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/[\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu, '')
    .trim()
}
