import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
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

const failedSteps = [
  step('Types', 'typescript/bin/tsc', ['--noEmit']),
  step('Lint', 'eslint/bin/eslint.js', ['.', '--max-warnings', '0']),
  step('Format', 'prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']),
  step('Tests', 'vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${RESULTS}`,
    ...wanted
  ])
].filter(Boolean)

tell()
tell(`All steps: ${duration(Date.now() - began)}`)
if (failedSteps.length > 0) tell(`Not in order: ${failedSteps.join(', ')}`)
const { line, failed } = closingLine(readResults())
tell(line)
process.exitCode = failed || failedSteps.length > 0 ? 1 : 0

/** Runs one tool of the project's own packages; answers its name where it failed. */
function step(name, program, args) {
  tell()
  tell(`${name} …`)
  const start = Date.now()
  const result = spawnSync(process.execPath, [join(PROJECT, 'node_modules', program), ...args], {
    cwd: PROJECT,
    env: childEnv(process.env, process.stdout.isTTY === true),
    stdio: ['ignore', 'inherit', 'inherit']
  })
  tell(`${name}: ${result.status === 0 ? 'in order' : 'NOT in order'}, ${duration(Date.now() - start)}`)
  return result.status === 0 ? undefined : name
}

function readResults() {
  try {
    return JSON.parse(readFileSync(RESULTS, 'utf8'))
  } catch {
    return undefined
  }
}
