export type FenceKind =
  /** The first line is not three dashes. */
  | 'missing'
  /** Nothing stands in the file. */
  | 'empty'
  /** Something that is not seen before the dashes of the first line. */
  | 'unseen'
  /** Lines that end in carriage returns alone, so that the whole file would be one line, or in one too many. */
  | 'line-ends'
  /** Something stands after the dashes of the first line: another language, or text. */
  | 'language'
  /** No second line of three dashes. */
  | 'open'
  /** The second fence has something after its dashes. */
  | 'closing'

/** What is wrong with the two lines of three dashes; undefined where both are there. */
export function fenceProblem(text: string): { readonly kind: FenceKind; readonly line: number } | undefined {
  if (text.trim() === '') return { kind: 'empty', line: 1 }
  if (/^-{3}[ \t]*\r(?!\n)/u.test(text)) return { kind: 'line-ends', line: 1 }
  const lines = text.split(/\r?\n/u)
  const first = lines[0] ?? ''
  if (/^[\s\u200b\u200e\u200f\u2060\ufeff]+---\s*$/u.test(first)) return { kind: 'unseen', line: 1 }
  if (!first.startsWith('---') || first.startsWith('----')) return { kind: 'missing', line: 1 }
  if (first.trim() !== '---') return { kind: 'language', line: 1 }
  const closing = lines.findIndex((line, index) => index > 0 && line.startsWith('---'))
  if (closing < 0) return { kind: 'open', line: 1 }
  return (lines[closing] ?? '').trim() === '---' ? undefined : { kind: 'closing', line: closing + 1 }
}

const MORE_KEYS = /^---[ \t]*\r?\n(?:[ \t]*\r?\n)*[a-z][a-z-]*:(?:[ \t].*)?\r?\n(?:[^\n]*\n)*?---[ \t]*$/mu

/** Where keys stand between two lines of dashes once more, in the prose below those that are read; undefined where they do not. */
export function moreKeysAt(body: string): number | undefined {
  const at = body.search(MORE_KEYS)
  return at < 0 ? undefined : body.slice(0, at).split('\n').length - 1
}

/** The lines of the marks that a merge of two versions leaves where both changed the same place; none where it went through. */
export function mergeMarks(text: string): number[] {
  if (!/^(?:<{7}|>{7})(?:\s|$)/mu.test(text)) return []
  return text
    .split(/\r?\n/u)
    .flatMap((line, index) => (/^(?:<{7}|={7}|>{7}|\|{7})(?:\s|$)/u.test(line) ? [index + 1] : []))
}
