import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

const KB = 1024

export const fileTooLarge: FileCheck = {
  card: {
    code: 'file/too-large',
    severity: 'error',
    looksAt: 'Keys that take more than 64 KB, prose that takes more than 256 KB.',
    why: 'No site needs so much; something was pasted here that belongs elsewhere.',
    sources: ['project-rule'],
    fix: 'Move prose below the second line of dashes, what sites share into _shared/, and long texts into a PDF that is bound in.',
    worked: {
      example: `revision: "${'x'.repeat(64 * KB)}"`,
      instead: 'revision: "2"'
    }
  },
  word: fault => ({
    message: `The ${detail(fault, 'part')} of this file take${detail(fault, 'part') === 'keys' ? '' : 's'} ${Math.ceil(Number(detail(fault, 'bytes')) / KB)} KB; ${Number(detail(fault, 'most')) / KB} KB is the most.`,
    fix:
      detail(fault, 'part') === 'keys'
        ? 'Move prose below the second "---", and what sites share into _shared/.'
        : 'Keep what the crew needs, and bind the rest in as a PDF.',
    values: { bytes: Number(detail(fault, 'bytes')), most_bytes: Number(detail(fault, 'most')) }
  })
}
