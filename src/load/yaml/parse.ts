import { parseDocument } from 'yaml'
import type { Document, ParsedNode, YAMLError } from 'yaml'

export interface ParsedYaml {
  readonly root: ParsedNode | null
  readonly errors: readonly Pick<YAMLError, 'code' | 'message' | 'pos'>[]
}

/**
 * YAML 1.2 core: dates and times stay text, "yes" stays text, nothing runs. Positions are offsets into the text. Where the parser gives up,
 * as it does on brackets nested thousands deep, that is an error of the text like any other.
 */
export function parseYaml(text: string): ParsedYaml {
  if (isTooDeep(text)) return gaveUp(text, 'nested too deep')
  try {
    const document: Document.Parsed = parseDocument(text, {
      version: '1.2',
      schema: 'core',
      merge: false,
      strict: true,
      uniqueKeys: true,
      prettyErrors: false,
      logLevel: 'error',
      keepSourceTokens: false
    })
    return { root: document.contents, errors: [...document.errors, ...document.warnings] }
  } catch (reason) {
    const message = reason instanceof Error ? reason.message : String(reason)
    return gaveUp(text, message)
  }
}

function gaveUp(text: string, message: string): ParsedYaml {
  return { root: null, errors: [{ code: 'RESOURCE_EXHAUSTION', message, pos: [0, text.length] }] }
}

/** No site file nests a tenth as deep. */
const MOST_DEEP = 200
const MANY_SIGNS = new RegExp(`(?:[-?:][ \\t]+){${MOST_DEEP}}`, 'u')

/**
 * Whether brackets or signs of lists nest deeper than anybody writes. The parser calls itself for each level; where it has used up the stack, an
 * expression that is compiled just then ends the whole process, which nothing can catch.
 */
export function isTooDeep(text: string): boolean {
  let depth = 0
  for (const [sign] of text.matchAll(/[[\]{}]/gu)) {
    depth = sign === '[' || sign === '{' ? depth + 1 : Math.max(0, depth - 1)
    if (depth > MOST_DEEP) return true
  }
  return MANY_SIGNS.test(text)
}
