import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { SignOffKind } from '../../model/closeout.ts'

const ASKED: readonly SignOffKind[] = [
  'walk-through',
  'maintenance checklist',
  "installer's statement",
  'certificate of completion'
]

export const closeoutSignOffs: SiteCheck = {
  card: {
    code: 'closeout/sign-offs',
    severity: 'error',
    looksAt:
      "What has to be signed at handover: the maintenance checklist, the installer's statement, the certificate, the walk-through; or the recorded refusal.",
    why: 'Without a signature, or a refusal with its day, nobody can show what was handed over.',
    sources: ['mwelo-492-9', 'project-rule'],
    fix: 'Have them signed, or write who refused, when and why.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30, sign-offs: [{ kind: walk-through, by: M. Example, on: 2025-04-30 }] }`,
      instead: `closeout:
  acceptance: 2025-04-30
  sign-offs:
    - { kind: walk-through, by: M. Example, on: 2025-04-30 }
    - { kind: maintenance checklist, refused: "2025-04-30 15:20, no time" }
    - { kind: "installer's statement", by: P. Sample, on: 2025-04-30 }
    - { kind: certificate of completion, by: P. Sample, on: 2025-05-02, copies-to: [owner, water supplier] }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    const { signOffs } = closeout
    const lacking = ASKED.filter(kind => !signOffs.some(one => one.kind === kind))
    if (lacking.length > 0)
      report({
        subject: lacking.join(', '),
        at: at(closeout, 'sign-offs'),
        message: `Neither signed nor refused: ${joined(lacking)}.`,
        fix: 'Have them signed, or write "refused:" with day, time and reason.'
      })
    for (const one of signOffs) {
      const isSigned = one.by !== undefined && one.on !== undefined
      // A refusal carries its day in its own words.
      const isRefused = one.refused !== undefined && /\d{4}-\d{2}-\d{2}/u.test(one.refused)
      if (isSigned || isRefused || (one.refused !== undefined && one.on !== undefined)) continue
      report({
        subject: one.kind,
        at: at(one),
        message: `${one.kind}: ${one.refused === undefined ? 'no name or no day' : 'the refusal has no day'}.`,
        fix: one.refused === undefined ? 'Write "by:" and "on:".' : 'Write the day and the time of the refusal.'
      })
    }
  }
}
