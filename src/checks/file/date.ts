import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, details, fixed, listed, named } from './say.ts'

export const fileDate: FileCheck = {
  card: {
    code: 'file/date',
    severity: 'error',
    looksAt: 'A day that does not exist, one of another age, or one written in another order than year-month-day.',
    why: 'A date that is moved in silence to the next day that exists would move every due date made from it.',
    sources: ['iso-8601', 'project-rule'],
    fix: 'Write year, month and day: 2026-05-04. A day of every year is month and day: 04-01.',
    worked: {
      example: `warranty:
  - { item: whole system, start: 2026-02-30, end: 2027-03-20 }`,
      instead: `warranty:
  - { item: whole system, start: 2026-03-20, end: 2027-03-20 }`
    }
  },
  word: fault => ({ message: named(fault, `"${detail(fault, 'written')}": ${reason(fault)}`), fix: fix(fault) })
}

function reason(fault: Fault): string {
  switch (detail(fault, 'reason')) {
    case 'day':
      return `${detail(fault, 'month')} has ${detail(fault, 'days')} days${fault.details['everyYear'] === true ? ' at most' : ''}.`
    case 'month':
      return `there is no month ${detail(fault, 'month')}.`
    case 'year':
      return `the year must be from ${detail(fault, 'first')} to ${detail(fault, 'last')}.`
    case 'two-ways':
      return 'day and month may stand in either order here.'
    case 'month-day-form':
      return 'a day of every year is two digits for the month, a dash, two for the day.'
    default:
      return 'a day is written year-month-day.'
  }
}

function fix(fault: Fault): string {
  const candidates = details(fault, 'candidates')
  if (candidates.length > 1) return `Write ${listed(candidates, 'or')}, whichever is meant.`
  if (detail(fault, 'reason') === 'day') return `Write the day that was meant, such as "${detail(fault, 'corrected')}".`
  const example = detail(fault, 'reason').startsWith('month-day') ? '04-01' : '2026-05-04'
  return fixed(fault, `Write the day, such as ${example}.`)
}
