import type { Words } from '../words/words.ts'

/** The kind of a backflow assembly: as the file says it, and the one fixed word of it in the language of the page. */
export function assemblyIn(kind: string, { binder }: Words): string {
  return kind === 'not fitted' ? binder.supplies.notFitted : kind
}
