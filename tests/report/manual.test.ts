import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { checksManual } from '../../src/report/manual.ts'

it('docs/checks.md is what the headers of the checks say', () => {
  const committed = readFileSync(join(import.meta.dirname, '../../docs/checks.md'), 'utf8')
  expect(committed, 'write it anew: npx tsx tests/tools/write-checks-manual.ts').toBe(checksManual(CHECKS))
})
