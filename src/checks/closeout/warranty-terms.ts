import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { Warranty } from '../../model/site.ts'
import type { IsoDate } from '../../units/date.ts'

export const warrantyTerms: SiteCheck = {
  card: {
    code: 'closeout/warranty-terms',
    severity: 'warning',
    looksAt:
      'A warranty: not before acceptance, its end after its start, with terms and whom to call; nothing temporary is taken away before it ends.',
    why: 'A warranty that starts before the work is accepted is shorter than it reads.',
    sources: ['ufgs-closeout', 'project-rule'],
    fix: 'Write start, end, terms and contact.',
    worked: {
      example: `warranty: [{ item: whole system, start: 2025-03-01, end: 2026-04-30, terms: parts, contact: installer }]
closeout: { acceptance: 2025-04-30 }`,
      instead: `warranty: [{ item: whole system, start: 2025-04-30, end: 2026-04-30, terms: parts, contact: installer }]
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    for (const one of site.warranties)
      for (const message of wrongs(one, closeout.acceptance))
        report({
          subject: one.item,
          at: at(one),
          message: `${one.item}: ${message}`,
          fix: 'Hold it against the certificate and write what that says.'
        })
    const ends = site.warranties.flatMap(({ end }) => (end === undefined ? [] : [end])).sort()
    const [first] = ends
    for (const phase of [...(site.phases ?? []), ...site.stations.flatMap(one => one.phases ?? [])])
      if (phase.name === 'temporary' && phase.to !== undefined && first !== undefined && phase.to < first)
        report({
          subject: phase.name,
          at: at(phase, 'to'),
          severity: 'note',
          message: `The temporary watering goes on ${phase.to}, before the warranty ends on ${first}.`,
          fix: 'See that taking it away does not end the warranty.'
        })
  }
}

function wrongs({ start, end, terms, contact }: Warranty, acceptance: IsoDate | undefined): string[] {
  const lacking = [...(end ? [] : ['end']), ...(terms ? [] : ['terms']), ...(contact ? [] : ['contact'])]
  return [
    ...(start && acceptance && start < acceptance
      ? [`it starts on ${start}, before acceptance on ${acceptance}.`]
      : []),
    ...(start && end && end <= start ? [`it ends on ${end}, not after its start on ${start}.`] : []),
    ...(lacking.length > 0 ? [`${joined(lacking)} not written.`] : [])
  ]
}
