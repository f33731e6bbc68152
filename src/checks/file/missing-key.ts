import type { FileCheck } from '../check.ts'
import { detail, named, suchAs } from './say.ts'

export const missingKey: FileCheck = {
  card: {
    code: 'file/missing-key',
    severity: 'error',
    looksAt: 'A key that a record cannot do without.',
    why: 'Without it the record cannot be named, dated or reckoned with.',
    sources: ['project-rule'],
    fix: 'Write the key with its value.',
    worked: {
      example: `season: { from: 04-01 }`,
      instead: `season: { from: 04-01, to: 10-15 }`
    }
  },
  word: fault => {
    const [key, under, entry] = [detail(fault, 'key'), detail(fault, 'under'), detail(fault, 'entry')]
    const missing = `"${key}" is missing${under === '' ? '' : ` ${under}`}.`
    return {
      message: named(fault, entry === '' ? missing : `entry ${entry} of "${key}" is blank.`),
      fix: entry === '' ? suchAs(`${key}: ${detail(fault, 'example')}`) : 'Fill it in, or take the entry out.'
    }
  }
}
