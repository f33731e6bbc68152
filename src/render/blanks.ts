/** A stretch of a line, or a blank in it with what is written there. */
export type Piece =
  { readonly text: string; readonly blank?: undefined } | { readonly text: string; readonly blank: string }

const BLANK = /(_{4,})/u
/** "With every valve closed, read the meter. Found: " asks for what was found. */
const ASKED = /([^.:;?]+)[:?]\s*$/u

/** A line in pieces, a blank on one line with the word before it: "Old: ________ New: ________" has two blanks, each named by the words before it. */
export function pieces(line: string): Piece[] {
  let asked = ''
  return line.split(BLANK).flatMap<Piece>((text, index, all) => {
    if (BLANK.test(text)) return [{ text, blank: asked }]
    asked = ASKED.exec(text)?.[1]?.trim() ?? asked
    const before = all[index + 1] !== undefined
    return text === '' ? [] : [{ text: before ? text.replace(/ $/u, '\u00a0') : text }]
  })
}

/** The name of a blank: sheet, line and column, as far as they are there. */
export function fieldName(...parts: readonly (string | undefined)[]): string {
  return parts.filter(part => part !== undefined && part !== '').join(', ')
}
