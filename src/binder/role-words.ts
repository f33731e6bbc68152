import type { Words } from '../words/words.ts'

/** The usual roles in the language of the page; any other as the file says it. */
export function roleIn(role: string, { boxPage }: Words): string {
  return (boxPage.roles as Readonly<Record<string, string>>)[role] ?? role
}
