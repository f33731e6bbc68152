import type { FileCheck } from '../check.ts'
import { detail, fixed, named } from './say.ts'

export const decimalComma: FileCheck = {
  card: {
    code: 'file/decimal-comma',
    severity: 'error',
    looksAt: 'A number written with a comma.',
    why: 'A comma is a decimal mark in one country and parts thousands in another, so 1,200 could be either.',
    sources: ['project-rule'],
    fix: 'Write decimals with a point and thousands without a mark.',
    worked: {
      example: `supplies:
  - id: S1
    kind: potable
    static-pressure: 4,1 bar
    backflow: { kind: double check, tested: 2026-03-10 }`,
      instead: `supplies:
  - id: S1
    kind: potable
    static-pressure: 4.1 bar
    backflow: { kind: double check, tested: 2026-03-10 }`
    }
  },
  word: fault => {
    const [thousands, decimal] = [detail(fault, 'thousands'), detail(fault, 'decimal')]
    return {
      message: named(fault, `"${detail(fault, 'written')}" has a comma in its number.`),
      fix: fixed(fault, `Write ${thousands} if the comma parts thousands, ${decimal} if it is a decimal mark.`)
    }
  }
}
