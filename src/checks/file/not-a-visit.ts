import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

export const notAVisit: FileCheck = {
  card: {
    code: 'file/not-a-visit',
    severity: 'warning',
    looksAt:
      'A text in the visits folder that is not named as visits are, such as 2026-05-04-route.md, or one named so that lies in another folder.',
    why: 'It is not read, so what the visit found and did is missing from the binder and the due list.',
    sources: ['project-rule'],
    fix: 'Save it as text in the visits folder itself, under a name such as 2026-05-04-route.md.',
    worked: {
      example: 'visits/2026-04-10-route.txt',
      instead: 'visits/2026-04-10-route.md'
    }
  },
  word: fault => ({
    message: `${detail(fault, 'name')} is not read as a visit.`,
    fix: `Save it as text in the visits folder itself, as ${detail(fault, 'name')
      .replace(/\.[^.]*$/u, '')
      .replace(/\.md$/iu, '')}.md.`
  })
}
