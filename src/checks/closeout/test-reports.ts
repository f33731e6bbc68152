import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { TestKind } from '../../model/closeout.ts'

const ASKED: readonly TestKind[] = ['pressure', 'flush', 'coverage', 'audit']

export const closeoutTestReports: SiteCheck = {
  card: {
    code: 'closeout/test-reports',
    severity: 'error',
    looksAt: 'The pressure, flushing, coverage and audit reports, before acceptance, and who audited.',
    why: 'A leak in a closed trench is found by the owner, and paid by the owner.',
    sources: ['mwelo-492-9', 'project-rule'],
    fix: 'Write each test with its day; the auditor neither designed nor installed the system.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30, tests: [{ kind: pressure, on: 2025-04-10, passed: yes }] }`,
      instead: `closeout:
  acceptance: 2025-04-30
  tests:
    - { kind: pressure, on: 2025-04-10, passed: yes }
    - { kind: flush, on: 2025-04-10, passed: yes }
    - { kind: coverage, on: 2025-04-12, passed: yes }
    - { kind: audit, on: 2025-04-20, by: H. Example, independent: yes }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    const { tests, acceptance } = closeout
    const lacking = ASKED.filter(kind => !tests.some(one => one.kind === kind && one.on !== undefined))
    if (lacking.length > 0)
      report({
        subject: lacking.join(', '),
        at: at(closeout, 'tests'),
        message: `No dated report of ${joined(lacking)}.`,
        fix: `Write ${joined(lacking.map(kind => `"kind: ${kind}"`))} with "on:" under tests.`
      })
    for (const one of tests) {
      if (one.on !== undefined && acceptance !== undefined && one.on > acceptance && ASKED.includes(one.kind))
        report({
          subject: one.kind,
          at: at(one, 'on'),
          message: `The ${one.kind} test of ${one.on} is later than the acceptance of ${acceptance}.`,
          fix: 'Correct the day, or test before acceptance.'
        })
      if (one.passed === false)
        report({
          subject: one.kind,
          at: at(one, 'passed'),
          message: `The ${one.kind} test did not pass.`,
          fix: 'Mend it, test again and write that test.'
        })
      if (one.kind === 'audit' && one.independent !== true)
        report({
          subject: one.kind,
          at: at(one, 'independent'),
          message: 'Nothing says that the auditor neither designed nor installed the system.',
          fix: 'Write "independent: yes", or have it audited by somebody who did neither.'
        })
    }
  }
}
