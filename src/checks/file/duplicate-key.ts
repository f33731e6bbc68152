import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

export const duplicateKey: FileCheck = {
  card: {
    code: 'file/duplicate-key',
    severity: 'error',
    looksAt: 'A key that stands twice in one place.',
    why: 'Only one of the two could count, and nobody would see which.',
    sources: ['yaml-1-2'],
    fix: 'Keep one of them. Several entries of one kind are a list under one key.',
    worked: {
      example: `season: { from: 04-01, to: 10-15, from: 05-01 }`,
      instead: `season: { from: 04-01, to: 10-15 }`
    }
  },
  word: fault => ({
    message: `"${detail(fault, 'key')}" stands twice in the same place.`,
    fix:
      detail(fault, 'key') === 'id'
        ? 'Start a new entry with a dash, "- id:", or take one of the two out.'
        : `Keep one "${detail(fault, 'key')}:" and take the other out, or make one list of the two.`
  })
}
