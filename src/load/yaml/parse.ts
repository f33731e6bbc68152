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
    return { root: null, errors: [{ code: 'RESOURCE_EXHAUSTION', message, pos: [0, text.length] }] }
  }
}
