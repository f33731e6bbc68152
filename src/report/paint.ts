/** Colors for a terminal. Meaning never hangs on them: the word stands beside. */
export interface Paint {
  readonly bold: (text: string) => string
  readonly dim: (text: string) => string
  readonly error: (text: string) => string
  readonly warning: (text: string) => string
  readonly note: (text: string) => string
}

const wrap = (open: number, close: number) => (text: string) => `\u001b[${open}m${text}\u001b[${close}m`
const same = (text: string): string => text

export const PLAIN: Paint = { bold: same, dim: same, error: same, warning: same, note: same }
export const COLORED: Paint = {
  bold: wrap(1, 22),
  dim: wrap(2, 22),
  error: wrap(31, 39),
  warning: wrap(33, 39),
  note: wrap(36, 39)
}
