import type { FileCheck } from '../check.ts'
import { detail, details, listed, named } from './say.ts'

export const unitWrongKind: FileCheck = {
  card: {
    code: 'file/unit-wrong-kind',
    severity: 'error',
    looksAt: 'A unit of another kind than the key asks for: a flow where an area is due.',
    why: 'Two values have changed places, or the value stands under the wrong key.',
    sources: ['project-rule'],
    fix: 'Write the value that belongs to this key, with its unit.',
    worked: {
      example: `supplies:
  - { id: S1, kind: potable, limit: 4.1 bar, backflow: { kind: double check, tested: 2026-03-10 } }`,
      instead: `supplies:
  - { id: S1, kind: potable, limit: 60 L/min, backflow: { kind: double check, tested: 2026-03-10 } }`
    }
  },
  word: fault => ({
    message: named(
      fault,
      `"${detail(fault, 'written')}" is ${detail(fault, 'given')}; ${detail(fault, 'noun')} is due.`
    ),
    fix: `Write ${detail(fault, 'noun')} in ${listed(details(fault, 'units'), 'or')}, such as "${detail(fault, 'key')}: ${detail(fault, 'example')}".`
  })
}
