import type { Value } from '../binder/blocks.ts'

interface Row {
  readonly label: string
  readonly value: Value
}

/** Letters that a name and a value may have to stand in half a line; a name may take two lines there. */
const LABEL_MOST = 30
const VALUE_MOST = 26

/** Whether facts stand two in a row: where all of them are short, since a long one between them would leave holes. */
export function arePaired(rows: readonly Row[]): boolean {
  return rows.length > 1 && rows.every(isShort)
}

function isShort({ label, value }: Row): boolean {
  return label.length <= LABEL_MOST && value.text.length <= VALUE_MOST && value.note === undefined
}
