import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

const KB = 1024

export const fileTooLarge: FileCheck = {
  card: {
    code: 'file/too-large',
    severity: 'error',
    looksAt: 'Keys that take more than 64 KB.',
    why: 'No site needs so much; something was pasted here that belongs elsewhere.',
    sources: ['project-rule'],
    fix: 'Move prose below the second line of dashes, and what sites share into _shared/.',
    worked: {
      example: `revision: "${'x'.repeat(64 * KB)}"`,
      instead: 'revision: "2"'
    }
  },
  word: fault => ({
    message: `The keys of this file take ${Math.ceil(Number(detail(fault, 'bytes')) / KB)} KB; ${Number(detail(fault, 'most')) / KB} KB is the most.`,
    fix: 'Move prose below the second "---", and what sites share into _shared/.',
    values: { bytes: Number(detail(fault, 'bytes')), most_bytes: Number(detail(fault, 'most')) }
  })
}
