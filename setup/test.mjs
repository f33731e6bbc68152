import { Buffer } from 'node:buffer'
import { spawn } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { setPriority } from 'node:os'
import { join } from 'node:path'
import { PROJECT } from './browser.mjs'
import { closingLine } from './closing-line.mjs'
import { prepare } from './prepare.mjs'
import { childEnv, duration, tell } from './tell.mjs'

// npm test: everything that must hold, on a machine that may have had nothing. Tests that print fail where no browser could be had.
const RESULTS = join(PROJECT, '.cache', 'test-results.json')
const wanted = process.argv.slice(2)
const began = Date.now()

await prepare()
mkdirSync(join(PROJECT, '.cache'), { recursive: true })
rmSync(RESULTS, { force: true })

// Tests wait for commands and browsers a quarter of their time; the three take what is left. What they say is told whole, after the tests.
const looks = [
  run('Types', 'typescript/bin/tsc', ['--noEmit'], 'pipe'),
  run('Lint', 'eslint/bin/eslint.js', ['.', '--max-warnings', '0'], 'pipe'),
  run('Format', 'prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.'], 'pipe')
]
tell()
tell('Tests; types, lint and format beside them …')
const reports = ['--reporter=default', '--reporter=json', `--outputFile.json=${RESULTS}`]
const steps = [told(await run('Tests', 'vitest/vitest.mjs', ['run', ...reports, ...wanted], 'inherit'))]
for (const look of looks) steps.push(told(await look))
const notInOrder = steps.filter(one => !one.inOrder).map(one => one.name)

tell()
tell(`All steps: ${duration(Date.now() - began)}`)
if (notInOrder.length > 0) tell(`Not in order: ${notInOrder.join(', ')}`)
const { line, failed } = closingLine(readResults())
tell(line)
process.exitCode = failed || notInOrder.length > 0 ? 1 : 0

/** Runs one tool of the project's own packages: its name, whether it found all in order, what it said unless it spoke for itself, its time. */
async function run(name, program, args, output) {
  const start = Date.now()
  const child = spawn(process.execPath, [join(PROJECT, 'node_modules', program), ...args], {
    cwd: PROJECT,
    env: childEnv(process.env, process.stdout.isTTY === true),
    stdio: ['ignore', output, output]
  })
  if (output === 'pipe') giveWay(child)
  const said = []
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', chunk => said.push(chunk))
  const code = await new Promise(resolve => {
    child.once('error', () => resolve(1))
    child.once('close', resolve)
  })
  return { name, inOrder: code === 0, said: Buffer.concat(said), took: duration(Date.now() - start) }
}

/** To the tests, whose browsers have a time to answer in. */
function giveWay({ pid }) {
  try {
    if (pid) setPriority(pid, 15)
  } catch {
    // Where it may not, they share alike.
  }
}

function told(step) {
  process.stdout.write(step.said)
  tell(`${step.name}: ${step.inOrder ? 'in order' : 'NOT in order'}, ${step.took}`)
  return step
}

function readResults() {
  try {
    return JSON.parse(readFileSync(RESULTS, 'utf8'))
  } catch {
    return undefined
  }
}
