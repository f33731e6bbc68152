import { groupBy, sortedBy } from '../../base/collections.ts'
import type { Visit } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const visitTwice: SiteCheck = {
  card: {
    code: 'file/visit-twice',
    severity: 'warning',
    looksAt: 'Two visits that say the same, word for word, as a file that was copied does.',
    why: 'A visit that stands twice counts twice: hours, parts, batteries fitted.',
    sources: ['project-rule'],
    fix: 'Take one of the two files away.',
    worked: {
      example: 'on: 2026-04-20\nby: A. Hand\n---\non: 2026-04-20\nby: A. Hand',
      instead: 'on: 2026-04-20\nby: A. Hand\n---\non: 2026-04-21\nby: A. Hand'
    }
  },
  run: ({ site }, report) => {
    for (const group of groupBy(site.visits, said).values()) {
      // The copy has the longer name: "route copy.md", "route (1).md".
      const [first, ...others] = sortedBy(group, visit => visit.at.file.length)
      for (const visit of first ? others : []) {
        report({
          subject: '',
          at: at(visit, 'on'),
          message: `${nameOf(visit)} says the same as ${first ? nameOf(first) : ''}, word for word.`,
          fix: 'Take one of the two files away, or write what the second visit was.',
          values: { on: visit.on },
          ...(first ? { related: [{ at: at(first, 'on'), note: 'the other one' }] } : {})
        })
      }
    }
  }
}

/** All that a visit says, but where it says it. */
const said = (visit: Visit): string =>
  JSON.stringify(visit, (key, value: unknown) => (key === 'at' ? undefined : value))

const nameOf = ({ at: { file } }: Visit): string => file.slice(file.lastIndexOf('/') + 1)
