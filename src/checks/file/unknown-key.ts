import type { FileCheck } from '../check.ts'
import { detail, details, fixed, listed, named, writeLine } from './say.ts'

/** A longer list of keys is read in the manual. */
const MOST_LISTED = 8

export const unknownKey: FileCheck = {
  card: {
    code: 'file/unknown-key',
    severity: 'error',
    looksAt: 'A key that is not known where it stands.',
    why: 'A key with a slip in it would be passed over in silence, and what it says would be missing from the binder.',
    sources: ['project-rule'],
    fix: 'Correct the key, or move it to where it belongs. What only the restricted sheet may show goes under "private:".',
    worked: {
      example: 'seasn: { from: 04-01, to: 10-15 }',
      instead: 'season: { from: 04-01, to: 10-15 }'
    }
  },
  word: fault => {
    const [key, what, nearest] = [detail(fault, 'key'), detail(fault, 'what'), detail(fault, 'nearest')]
    const belongs = details(fault, 'belongs')
    const colon = fault.details['colon'] === true
    if (fault.details['unseen'] === true)
      return {
        message: named(fault, `signs that cannot be seen stand in the key "${key}".`),
        why: 'Text that is pasted brings them along; with them it is another key.',
        fix: `Take the key out and type it anew: "${key}:".`
      }
    return {
      message: named(fault, colon ? `"${key}" has no colon after its key.` : `"${key}" is not a key of ${what}.`),
      ...(nearest === '' ? {} : { why: `The nearest key is "${nearest}".` }),
      fix: fixed(
        fault,
        nearest === '' ? elsewhere(key, what, belongs, details(fault, 'known')) : writeLine(`${nearest}:`)
      )
    }
  }
}

function elsewhere(key: string, what: string, belongs: readonly string[], known: readonly string[]): string {
  if (belongs.length > 0) return `"${key}" is a key of ${listed(belongs.slice(0, 3), 'or')}: move it there.`
  if (known.length > MOST_LISTED) return `Take it out; docs/site-file.md lists the keys of ${what}.`
  return `Take it out, or use one of ${listed(known, 'and')}.`
}
