import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'

const ROLES = ['owner', 'maintainer', 'installer'] as const

export const closeoutContacts: SiteCheck = {
  card: {
    code: 'closeout/contacts',
    severity: 'error',
    looksAt: 'The owner, the maintainer and the installer with a license, at handover.',
    why: 'Whoever finds water running must know whom to call, and a warranty is worth nothing without its installer.',
    sources: ['mwelo-492-9', 'project-rule'],
    fix: 'Write the three under contacts, the installer with a license.',
    worked: {
      example: `contacts: [{ role: owner, name: Testwick Council }]
closeout: { acceptance: 2025-04-30 }`,
      instead: `contacts: [{ role: owner, name: Testwick Council }, { role: maintainer, name: Plain Gardens }, { role: installer, name: Plain Irrigation, licence: TW-100 }]
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    const lacking = ROLES.filter(role => !site.contacts.some(one => one.role === role && (one.name ?? one.company)))
    if (lacking.length > 0)
      report({
        subject: lacking.join(', '),
        at: at(site, 'contacts'),
        message: `Handed over without ${joined(lacking.map(role => `the ${role}`))} among the contacts.`,
        fix: `Write ${joined(lacking.map(role => `"role: ${role}"`))} under contacts.`
      })
    for (const one of site.contacts)
      if (one.role === 'installer' && one.licence === undefined)
        report({
          subject: one.name ?? one.company ?? 'installer',
          at: at(one, 'licence'),
          message: `${one.name ?? one.company ?? 'The installer'}: no license is written.`,
          fix: 'Write the number of the license, or "none needed here".'
        })
  }
}
