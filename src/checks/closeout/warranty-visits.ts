import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'

const ASKED_MONTHS = [4, 9]

export const warrantyVisits: SiteCheck = {
  card: {
    code: 'closeout/warranty-visits',
    severity: 'note',
    looksAt: 'The looks at the work under its warranty, at 4 and at 9 months.',
    why: 'What shows in the first season is mended free of charge only if it is told in time.',
    sources: ['ufgs-closeout'],
    fix: 'Write "inspections: [4 months, 9 months]" with the warranty.',
    worked: {
      example: `warranty: [{ item: whole system, start: 2025-04-30, end: 2026-04-30 }]
closeout: { acceptance: 2025-04-30 }`,
      instead: `warranty: [{ item: whole system, start: 2025-04-30, end: 2026-04-30, inspections: [4 months, 9 months] }]
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    if (!closedOut(site)) return
    for (const one of site.warranties) {
      const lacking = ASKED_MONTHS.filter(months => !(one.inspections ?? []).some(after => after.months === months))
      if (lacking.length > 0)
        report({
          subject: one.item,
          at: at(one, 'inspections'),
          message: `${one.item}: no inspection ${joined(lacking.map(months => `${months} months`))} after the start.`,
          fix: 'Write "inspections: [4 months, 9 months]".'
        })
    }
  }
}
