import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

export const siteCopy: FileCheck = {
  card: {
    code: 'file/site-copy',
    severity: 'warning',
    looksAt: 'A second text of the site beside site.md, such as "site (conflicted copy).md" or "site copy.md".',
    why: 'Programs that keep a folder alike on two machines leave such a copy where both were edited. It is not read, so what somebody wrote into it is missing.',
    sources: ['project-rule'],
    fix: 'Bring what it says and site.md does not say into site.md, then take it away.',
    worked: {
      example: 'site (conflicted copy 2026-04-10).md',
      instead: 'notes.md'
    }
  },
  word: fault => ({
    message: `${detail(fault, 'name')} stands beside site.md and is not read.`,
    fix: 'Bring what it says and site.md does not say into site.md, then take it away or give it another name.'
  })
}
