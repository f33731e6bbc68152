import type { Value } from '../binder/blocks.ts'

interface Row {
  readonly label: string
  readonly value: Value
}

/** Letters that a name and a value may have to stand in half a line. */
const LABEL_MOST = 27
const VALUE_MOST = 26
/** A list of mostly short facts is paired where it has so many of them; a long one among them takes a whole line. */
const PAIRED_FROM = 4
const MOSTLY = 0.75

export const isShortFact = ({ label, value }: Row): boolean =>
  label.length <= LABEL_MOST && value.text.length <= VALUE_MOST && value.note === undefined

/** Whether facts stand two in a row. */
export function arePaired(rows: readonly Row[]): boolean {
  const short = rows.filter(isShortFact).length
  return rows.length > 1 && (short === rows.length || (short >= PAIRED_FROM && short / rows.length >= MOSTLY))
}
