import { auditVerdict } from './audit-verdict.mjs'
import { PROJECT } from './browser.mjs'
import { runNpm } from './packages.mjs'
import { tell } from './tell.mjs'

// npm run audit: weaknesses that are known of the packages used at run time. Ends with 1 only where there is one.
const { stdout } = runNpm(['audit', '--omit=dev', '--json'], { cwd: PROJECT })
const { lines, found } = auditVerdict(stdout ?? '')
for (const line of lines) tell(line)
process.exitCode = found ? 1 : 0
