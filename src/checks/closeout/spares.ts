import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut } from './closed-out.ts'

/** Share of each device that is handed over as spares; one university's rule, agreed share where the contract has none. */
const SHARE = 0.1

export const closeoutSpares: SiteCheck = {
  card: {
    code: 'closeout/spares',
    severity: 'warning',
    looksAt:
      'Spare parts, tools and keys: counted, received by somebody, and at least 10 % of each device that is installed.',
    why: 'A head that has to be ordered is a dry patch for two weeks.',
    sources: ['wsu-32-80', 'project-rule'],
    fix: 'Hand over what is lacking and have it receipted.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30, spares: [{ item: spray head, count: 1, installed: 40, received-by: M. Example }], tools: [{ item: valve key, count: 2, received-by: M. Example }] }`,
      instead: `closeout: { acceptance: 2025-04-30, spares: [{ item: spray head, count: 4, installed: 40, received-by: M. Example }], tools: [{ item: valve key, count: 2, received-by: M. Example }] }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    for (const key of ['spares', 'tools'] as const) {
      if (closeout[key].length === 0)
        report({
          subject: key,
          at: at(closeout, key),
          message: `No ${key} are on file.`,
          fix: `Count them and write them under ${key}, with who received them.`
        })
      for (const one of closeout[key]) {
        if (one.count === undefined || one.receivedBy === undefined)
          report({
            subject: one.item,
            at: at(one),
            message: `${one.item}: ${one.count === undefined ? 'not counted' : 'nobody has received it'}.`,
            fix: 'Write "count:" and "received-by:".'
          })
        // A count is whole: of 14 heads, two are 10 % or more.
        const least = Math.ceil(SHARE * (one.installed ?? 0))
        if (one.count !== undefined && one.count < least)
          report({
            subject: one.item,
            at: at(one, 'count'),
            message: `${one.item}: ${one.count} handed over for ${one.installed} installed; 10 % are ${least}.`,
            fix: `Hand over ${least - one.count} more.`,
            values: { count: one.count, least }
          })
      }
    }
  }
}
