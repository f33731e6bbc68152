import type { FileCheck } from '../check.ts'
import { detail, named } from './say.ts'

export const outOfRange: FileCheck = {
  card: {
    code: 'file/out-of-range',
    severity: 'error',
    looksAt: 'A number that cannot be: an area of zero, a latitude of 91; a value of more than 8,000 characters.',
    why: 'No such thing exists, so a digit, a sign or the place of the value is wrong.',
    sources: ['project-rule'],
    fix: 'Write the value again from the record or the plate.',
    worked: {
      example: 'location: { latitude: 549.7, longitude: -1.61, time-zone: Europe/London, country: GB }',
      instead: 'location: { latitude: 54.97, longitude: -1.61, time-zone: Europe/London, country: GB }'
    }
  },
  word: fault => ({
    message: named(fault, `"${detail(fault, 'written')}" ${detail(fault, 'range')}.`),
    fix: `Write the value again, such as "${detail(fault, 'key')}: ${detail(fault, 'example')}".`
  })
}
