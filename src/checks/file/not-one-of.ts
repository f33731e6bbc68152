import type { FileCheck } from '../check.ts'
import { detail, details, fixed, listed, named } from './say.ts'

export const notOneOf: FileCheck = {
  card: {
    code: 'file/not-one-of',
    severity: 'error',
    looksAt: 'A word that is not one of the few a key takes.',
    why: 'Each of these words decides something; another word decides nothing.',
    sources: ['project-rule'],
    fix: 'Write one of the words that the message lists.',
    worked: { example: 'paper: A5', instead: 'paper: A4' }
  },
  word: fault => {
    const words = details(fault, 'known')
    const known = listed(words, 'or')
    return {
      message: named(fault, `"${detail(fault, 'written')}" is not among the words for "${detail(fault, 'key')}".`),
      why: `It takes ${known}.`,
      fix: fixed(
        fault,
        words.length > 4
          ? `Write "${detail(fault, 'key')}:" with one of them.`
          : `Write ${listed(
              words.map(word => `"${detail(fault, 'key')}: ${word}"`),
              'or'
            )}.`
      )
    }
  }
}
