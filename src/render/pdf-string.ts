/** The marks that a string in brackets must escape. ISO 32000-1:2008, 7.3.4.2. */
export const inPdf = (text: string): string => text.replace(/[\\()]/gu, char => `\\${char}`)

/** A text string: as written where it is plain ASCII, else UTF-16 with its mark. ISO 32000-1:2008, 7.9.2.2. */
export function pdfText(text: string): string {
  if (/^[\x20-\x7e]*$/u.test(text)) return `(${inPdf(text)})`
  const units = [0xfeff, ...Array.from({ length: text.length }, (_, index) => text.charCodeAt(index))]
  return `<${units.map(unit => unit.toString(16).padStart(4, '0')).join('')}>`
}
