import type { FileCheck } from '../check.ts'
import { detail, details, fixed, listed, named } from './say.ts'

export const unitMissing: FileCheck = {
  card: {
    code: 'file/unit-missing',
    severity: 'error',
    looksAt: 'A measured value that is a bare number.',
    why: 'A number without a unit can mean several things, and a guess would go unnoticed into every figure made from it.',
    sources: ['project-rule'],
    fix: 'Write the unit after the number.',
    worked: {
      example: `supplies:
  - { id: S1, kind: potable, limit: 60, backflow: { kind: double check, tested: 2026-03-10 } }`,
      instead: `supplies:
  - { id: S1, kind: potable, limit: 60 L/min, backflow: { kind: double check, tested: 2026-03-10 } }`
    }
  },
  word: fault => {
    const [number, share] = [detail(fault, 'number'), detail(fault, 'share')]
    const units = details(fault, 'units').map(unit => `${number} ${unit}`)
    return {
      message: named(fault, `"${detail(fault, 'written')}" has no unit.`),
      why:
        units.length > 1
          ? `${listed(units.slice(0, 4), 'and')} are ${units.length === 2 ? 'both' : 'all'} plausible here.`
          : `It is ${detail(fault, 'noun')}; it needs its unit.`,
      fix:
        share === ''
          ? fixed(fault, `Write the number with its unit: ${listed(units, 'or')}.`)
          : `Write ${share} if it is a share of one, ${number} % if it is percent.`
    }
  }
}
