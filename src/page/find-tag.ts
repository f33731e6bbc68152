/** Letters and figures that mud makes alike. */
const ALIKE: Readonly<Record<string, string>> = { O: '0', Q: '0', I: '1', L: '1' }

/** The tag that a person means: small letters, spaces, hyphens and look-alikes do not matter where only one tag fits. */
export function findTag(typed: string, tags: readonly string[]): string | undefined {
  const exact = plain(typed)
  if (tags.includes(exact)) return exact
  const fits = tags.filter(tag => alike(tag) === alike(exact))
  return exact !== '' && fits.length === 1 ? fits[0] : undefined
}

function plain(text: string): string {
  return text.toUpperCase().replace(/[^0-9A-Z]/gu, '')
}

function alike(text: string): string {
  return text.replace(/[OQIL]/gu, letter => ALIKE[letter] ?? letter)
}
