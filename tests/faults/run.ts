import { parseArgs } from 'node:util'
import { killRuns } from './kills.ts'

// npx tsx tests/faults/run.ts --kills 200 --seed 1

const { values } = parseArgs({
  options: { kills: { type: 'string', default: '200' }, seed: { type: 'string', default: '1' } }
})
const { failures, ...figures } = await killRuns({ kills: Number(values.kills), seed: Number(values.seed) })
for (const failure of failures) process.stdout.write(`${failure}\n`)
process.stdout.write(`${JSON.stringify(figures, undefined, 2)}\n${figures.kills} kills, ${failures.length} failed.\n`)
process.exitCode = failures.length > 0 ? 1 : 0
