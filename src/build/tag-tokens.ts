/** What may be a tag in a site file, found without reading it as YAML. */
export interface TagTokens {
  readonly tokens: readonly string[]
  /** True where the file is written in a way that this cannot see through; such a file has to be read. */
  readonly opaque: boolean
}

/** Escapes, explicit keys, and values on lines of their own. The key is "tag" alone, not the end of another one: shut-off-tag. */
const UNUSUAL = /\\|^[ \t]*\?\s|(?<![\w-])tag["']?\s*:\s*[>|&*!]/mu
const VALUE = /(?<![\w-])tag["']?\s*:\s*["']?([^\s"',}\]]+)/gu

/** "tag: 7KQ3F9X" gives 7KQ3F9X. More may be found than are tags; none that is one is missed in a file that is not opaque. */
export function tagTokens(text: string): TagTokens {
  return { tokens: [...text.matchAll(VALUE)].map(([, token = '']) => token), opaque: UNUSUAL.test(text) }
}
