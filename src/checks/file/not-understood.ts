import type { FileCheck } from '../check.ts'
import { detail, fixed, named } from './say.ts'

export const notUnderstood: FileCheck = {
  card: {
    code: 'file/not-understood',
    severity: 'error',
    looksAt: 'A value in a form that cannot be read: a rule for days, a wire size, a run time, an interval, a slope.',
    why: 'What cannot be read is not guessed at.',
    sources: ['project-rule'],
    fix: 'Write it in one of the forms that the message shows.',
    worked: {
      example: `watering-rules:
  - { authority: Testwick Water, window: 22:00-06:00, days: every other day }`,
      instead: `watering-rules:
  - { authority: Testwick Water, window: 22:00-06:00, days: every 2 days from 2026-04-02 }`
    }
  },
  word: fault => {
    const example = detail(fault, 'example')
    return {
      message: named(fault, `"${detail(fault, 'written')}" cannot be read as ${detail(fault, 'expected')}.`),
      fix: fixed(fault, `Write it in a form such as ${example}.`)
    }
  }
}
