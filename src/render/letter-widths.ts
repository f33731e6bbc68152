/**
 * Widths of the letters of Atkinson Hyperlegible Next, bold, in thousandths of the type's size, rounded up to the next twenty. Measured in the
 * browser that prints; the plain cut is no wider but for a few signs by less than the rounding. A test holds them against the font.
 */
const BY_WIDTH: readonly (readonly [width: number, letters: string])[] = [
  [220, "'"],
  [260, 'j|¦'],
  [280, ',.:;‘’'],
  [300, 'i`´·¸¹ìíî'],
  [320, ' !l¡ï\u00a0'],
  [340, '()['],
  [360, ']'],
  [380, '-frt'],
  [400, '"_{}ª¯°'],
  [420, '²³º'],
  [440, '/1I\\¨ÌÍÎÏ'],
  [480, '“”'],
  [500, '*'],
  [520, 'csz¢ç–'],
  [540, '7vxy¶¿×ýÿ'],
  [560, '?Lak§àáâãäå~'],
  [580, '2<>FJehnouµèéêëñòóôõöøùúûü'],
  [600, '39E^bdgpq¤ÈÉÊËðþ'],
  [620, '$+5STZ¬±÷'],
  [640, '=468P£Þß'],
  [660, '0BCRVY¥«»ÇÝ'],
  [680, 'AKÀÁÂÃÄÅ€'],
  [700, 'DUXÙÚÛÜ'],
  [720, 'GHNÐÑ'],
  [740, '&wŸ'],
  [760, 'OQÒÓÔÕÖØ'],
  [780, '#…'],
  [800, '@©®'],
  [840, '—'],
  [860, 'M¼½'],
  [880, 'æ'],
  [900, 'Wm'],
  [940, '¾œ'],
  [980, '%Æ'],
  [1040, 'Œ']
]

const WIDTHS: ReadonlyMap<string, number> = new Map(
  BY_WIDTH.flatMap(([width, letters]) => [...letters].map(letter => [letter, width / 1000] as const))
)

/** A letter of another script is taken to be as wide as it is high. */
const UNKNOWN_EM = 1
/** Every letter of the monospaced cut, bold. */
export const MONO_EM = 0.632

/** Width of a text in the size of its type. */
export function textEm(text: string): number {
  let sum = 0
  for (const letter of text) sum += WIDTHS.get(letter) ?? UNKNOWN_EM
  return sum
}

const measured = new Map<string, readonly number[]>()
const MOST_MEASURED = 2_000
const SPACE_EM = textEm(' ')

/** Widths of the words of a text; a label asks for the same ones at one size after the other. */
function wordWidths(text: string): readonly number[] {
  const known = measured.get(text)
  if (known) return known
  if (measured.size >= MOST_MEASURED) measured.clear()
  const widths = text.split(/\s+/u).filter(Boolean).map(textEm)
  measured.set(text, widths)
  return widths
}

/** How many lines a text takes where a line is so many times the type's size wide; a word that is longer than a line is broken. */
export function linesOf(text: string, lineEm: number): number {
  let lines = 1
  let used = 0
  for (const width of wordWidths(text)) {
    const gap = used > 0 ? SPACE_EM : 0
    if (used + gap + width <= lineEm) {
      used += gap + width
      continue
    }
    if (used > 0) lines += 1
    const whole = Math.max(0, Math.ceil(width / lineEm - 1e-9) - 1)
    lines += whole
    used = width - whole * lineEm
  }
  return lines
}
