import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { Training } from '../../model/closeout.ts'

export const closeoutTraining: SiteCheck = {
  card: {
    code: 'closeout/training',
    severity: 'error',
    looksAt: 'The training: day, trainer, those present, topics, signature.',
    why: 'Those who were not shown how to shut it off call the installer, or nobody.',
    sources: ['project-rule'],
    fix: 'Write the training with all five.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30, training: [{ on: 2025-04-30, trainer: P. Sample }] }`,
      instead: `closeout: { acceptance: 2025-04-30, training: [{ on: 2025-04-30, trainer: P. Sample, attendees: [M. Example], topics: [shutting off], signed: yes }] }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    if (closeout.training.length === 0)
      report({
        subject: site.id,
        at: at(closeout, 'training'),
        message: 'No training is on file.',
        fix: 'Write "training: [{ on: …, trainer: …, attendees: […], topics: […], signed: yes }]".'
      })
    for (const one of closeout.training) {
      const lacking = lackingOf(one)
      if (lacking.length > 0)
        report({
          subject: one.on ?? 'training',
          at: at(one),
          message: `Training${one.on ? ` of ${one.on}` : ''}: ${joined(lacking)} not written.`,
          fix: `Write ${joined(lacking.map(key => `"${key}:"`))}.`
        })
    }
  }
}

function lackingOf({ on, trainer, attendees, topics, signed }: Training): string[] {
  return [
    ...(on === undefined ? ['on'] : []),
    ...(trainer === undefined ? ['trainer'] : []),
    ...(attendees.length === 0 ? ['attendees'] : []),
    ...(topics.length === 0 ? ['topics'] : []),
    ...(signed === true ? [] : ['signed'])
  ]
}
