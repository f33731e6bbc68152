/** The words of the script, by key; braces in them are filled in. */
export type ScriptWords = Readonly<Record<string, string>>

/** `fill('due in {n} days', { n: 3 })` is "due in 3 days". A word that is not there comes out empty: a page never shows a key. */
export function fill(text: string | undefined, values: Readonly<Record<string, string | number>> = {}): string {
  return (text ?? '').replace(/\{(\w+)\}/gu, (_, key: string) => String(values[key] ?? ''))
}
