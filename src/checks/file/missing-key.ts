import type { FileCheck } from '../check.ts'
import { capital, detail, fixed } from './say.ts'

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
    const [key, under] = [detail(fault, 'key'), detail(fault, 'under')]
    const prefix = fault.subject === '' ? '' : `${fault.subject}: `
    return {
      message: capital(`${prefix}"${key}" is missing${under === '' ? '' : ` ${under}`}.`),
      fix: fixed(fault, `Write "${key}:" with its value.`)
    }
  }
}
