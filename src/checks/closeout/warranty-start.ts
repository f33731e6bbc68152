import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const warrantyStart: SiteCheck = {
  card: {
    code: 'closeout/warranty-start',
    severity: 'warning',
    looksAt: 'A warranty whose start is not written down.',
    why: 'Nobody can say when it ends, so a repair under warranty may be paid for twice.',
    sources: ['ufgs-closeout'],
    fix: 'Write the day of acceptance from which the warranty counts.',
    worked: {
      example: `warranty:
  - { item: whole system, terms: parts and labor for 12 months }`,
      instead: `warranty:
  - { item: whole system, start: 2025-04-30, end: 2026-04-30, terms: parts and labor for 12 months }`
    }
  },
  run: ({ site }, report) => {
    for (const warranty of site.warranties) {
      if (warranty.start) continue
      report({
        subject: warranty.item,
        at: at(warranty, 'start'),
        message: `Warranty of ${warranty.item}: no start date.`,
        fix: 'Write "start: YYYY-MM-DD", the day of acceptance.'
      })
    }
  }
}
