import type { Recorded } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'
import { boxesInUse } from './in-use.ts'

export const lockWithoutKey: SiteCheck = {
  card: {
    code: 'box/lock-without-key',
    severity: 'note',
    looksAt: 'A box or a controller with a lock that no key of the register opens.',
    why: 'Whoever comes at night with water on the road stands before a locked door.',
    sources: ['project-rule'],
    fix: 'Write the key under "keys:", with what it opens and who holds it; its place and its code go under "private:".',
    worked: {
      example: `boxes:
  - { id: VB1, where: north bed, lock: padlock }`,
      instead: `boxes:
  - { id: VB1, where: north bed, lock: padlock }
keys:
  - { id: C7, opens: [VB1], count: 2, held-by: [owner, maintainer] }`
    }
  },
  run: ({ site }, report) => {
    const opened = new Set(site.keys.flatMap(one => one.opens))
    const locked: readonly { readonly id: string; readonly lock?: string; readonly record: Recorded }[] = [
      ...boxesInUse(site).map(one => ({ ...one, record: one })),
      ...controllersInService(site).map(one => ({ ...one, record: one }))
    ]
    for (const { id, lock, record } of locked) {
      if (lock === undefined || opened.has(id)) continue
      report({
        subject: id,
        at: at(record, 'lock'),
        message: `${id} has a lock (${lock}), and no key of the register opens it.`,
        fix: `Write it: keys: [{ id: C7, opens: [${id}], count: 2, held-by: [owner, maintainer] }]. Its place and its code go under "private:".`
      })
    }
  }
}
