import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, fixed, named } from './say.ts'

export const fileTime: FileCheck = {
  card: {
    code: 'file/time',
    severity: 'error',
    looksAt: 'A time of day that does not exist, or one written in another form than 22:30 or 10:30 pm.',
    why: 'A start time that is read wrong opens valves at the wrong hour.',
    sources: ['project-rule'],
    fix: 'Write hours and minutes: 22:30 or 10:30 pm. A window is two of them with a dash between: 23:00-05:00.',
    worked: {
      example: `watering-rules:
  - { authority: Testwick Water, window: 22:00-26:00 }`,
      instead: `watering-rules:
  - { authority: Testwick Water, window: 22:00-06:00 }`
    }
  },
  word: fault => ({
    message: named(fault, `"${detail(fault, 'written')}": ${reason(fault)}`),
    fix: fixed(fault, isWindow(fault) ? 'Write two times, such as 23:00-05:00.' : 'Write the time, such as 22:30.')
  })
}

function isWindow(fault: Fault): boolean {
  return detail(fault, 'reason') === 'window' || detail(fault, 'end') !== ''
}

function reason(fault: Fault): string {
  switch (detail(fault, 'reason')) {
    case 'hour':
      return `hours run from 00 to 23, and this says ${detail(fault, 'hour')}.`
    case 'minute':
      return `minutes run from 00 to 59, and this says ${detail(fault, 'minute')}.`
    case 'half':
      return 'with am or pm, hours run from 1 to 12.'
    case 'midnight':
      return 'midnight is 00:00.'
    case 'window':
      return 'a window is two times of day with a dash between.'
    default:
      return 'a time of day is hours and minutes with a colon between.'
  }
}
