import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { harmBrowsers, workshop } from './browsers.ts'
import { killRuns } from './kills.ts'

// npx tsx tests/faults/run.ts --kills 200 --seed 1
// npx tsx tests/faults/run.ts --browsers 100 --seed 1   browsers that are killed or hang while they print

const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '200' },
    browsers: { type: 'string' },
    seed: { type: 'string', default: '1' }
  }
})

if (values.browsers !== undefined) {
  // Short, since a browser puts a socket there, whose path may have a hundred signs.
  const work = mkdtempSync(join(tmpdir(), 'ul-'))
  const sites = resolve(import.meta.dirname, '../../sites')
  mkdirSync(join(work, 'sites'))
  for (const name of ['_shared', 'tansy-yard'])
    cpSync(join(sites, name), join(work, 'sites', name), { recursive: true })
  writeFileSync(
    join(work, 'sites/tags.csv'),
    readFileSync(join(sites, 'tags.csv'), 'utf8').replace(/^(?!tag|.*,tansy-yard,).*\n/gmu, '')
  )
  const { failures, ...figures } = await harmBrowsers(workshop(work), {
    rounds: Number(values.browsers),
    seed: Number(values.seed),
    onRound: progress
  })
  rmSync(work, { recursive: true, force: true })
  tell(failures, figures, `${figures.rounds} prints with harmed browsers`)
} else {
  const { failures, ...figures } = await killRuns({
    kills: Number(values.kills),
    seed: Number(values.seed),
    onKill: progress
  })
  tell(failures, figures, `${figures.kills} kills`)
}

/** A long run that is broken off has told what it saw. */
function progress(report: object): void {
  process.stdout.write(`${JSON.stringify(report)}\n`)
}

function tell(failures: readonly string[], figures: object, what: string): void {
  for (const failure of failures) process.stdout.write(`${failure}\n`)
  process.stdout.write(`${JSON.stringify(figures, undefined, 2)}\n${what}, ${failures.length} failed.\n`)
  process.exitCode = failures.length > 0 ? 1 : 0
}
