import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut } from './closed-out.ts'
import type { Phase } from '../../model/site.ts'

export const closeoutEstablishment: SiteCheck = {
  card: {
    code: 'closeout/establishment',
    severity: 'error',
    looksAt:
      'The day on which an establishment ends and the programs change, and the day on which temporary watering is taken away.',
    why: 'Plants that are watered as new stay thirsty for ever, and a temporary line without an end stays in the ground.',
    sources: ['mwelo-492-9', 'project-rule'],
    fix: 'Write the phases with their days: establishment to a day, then established.',
    worked: {
      example: `phases: [{ name: establishment, from: 2025-05-01 }]
closeout: { acceptance: 2025-04-30 }`,
      instead: `phases: [{ name: establishment, from: 2025-05-01, to: 2026-04-30 }, { name: established, from: 2026-05-01 }]
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    if (!closedOut(site)) return
    const all = [
      { of: site.id, record: site, phases: site.phases ?? [] },
      ...site.stations.map(one => ({ of: one.zone, record: one, phases: one.phases ?? [] }))
    ]
    if (all.every(({ phases }) => phases.length === 0))
      report({
        subject: site.id,
        at: at(site, 'phases'),
        message: `${site.id}: neither establishment nor established is written.`,
        fix: 'Write "phases: [{ name: establishment, from: …, to: … }, { name: established, from: … }]", or only established.'
      })
    for (const { of, phases } of all)
      for (const phase of phases) {
        const message = wrongOf(phase, phases, of)
        if (message)
          report({ subject: of, at: at(phase, 'to'), message, fix: 'Write "to: YYYY-MM-DD", and what comes after it.' })
      }
  }
}

function wrongOf({ name, to }: Phase, phases: readonly Phase[], of: string): string | undefined {
  if (name === 'established') return undefined
  if (to === undefined)
    return `${of}: no day is written on which ${name === 'temporary' ? 'the temporary watering' : 'the establishment'} ends.`
  if (name === 'establishment' && !phases.some(one => one.name === 'established'))
    return `${of}: nothing is written for the established landscape after ${to}.`
  return undefined
}
