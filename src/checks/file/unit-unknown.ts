import type { FileCheck } from '../check.ts'
import { detail, details, fixed, listed, named, suchAs } from './say.ts'

export const unitUnknown: FileCheck = {
  card: {
    code: 'file/unit-unknown',
    severity: 'error',
    looksAt: 'A unit that is not one of those known here.',
    why: 'A unit that is not known cannot be reckoned with.',
    sources: ['project-rule'],
    fix: 'Write one of the units that the message lists.',
    worked: {
      example: `supplies:
  - { id: S1, kind: potable, limit: 60 lpm, backflow: { kind: double check, tested: 2026-03-10 } }`,
      instead: `supplies:
  - { id: S1, kind: potable, limit: 60 L/min, backflow: { kind: double check, tested: 2026-03-10 } }`
    }
  },
  word: fault => ({
    message: named(fault, `"${detail(fault, 'written')}": "${detail(fault, 'unit')}" is not a unit known here.`),
    why: `It should be ${detail(fault, 'noun')}, in ${listed(details(fault, 'units'), 'or')}.`,
    fix: fixed(fault, suchAs(`${detail(fault, 'key')}: ${detail(fault, 'example')}`))
  })
}
