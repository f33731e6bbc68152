import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { CHECKS } from '../../src/checks/list.ts'
import { checksManual } from '../../src/report/manual.ts'

// Writes docs/checks.md anew from the headers of the checks: npx tsx tests/tools/write-checks-manual.ts
writeFileSync(join(import.meta.dirname, '../../docs/checks.md'), checksManual(CHECKS))
