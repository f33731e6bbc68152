#!/usr/bin/env node
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from './browser.mjs'
import { nodeProblem } from './node-version.mjs'
import { stop } from './tell.mjs'

// The command, from any folder.
const problem = nodeProblem(process.versions.node)
if (problem) stop(problem)
if (!existsSync(join(PROJECT, 'node_modules', 'tsx')))
  stop(`The packages are not installed yet. Run this once, in ${PROJECT}:`, '  npm start')

// Somebody who reads only the first lines (`underlid due | head`) closes our output. The work goes on to its end, and its exit code.
for (const output of [process.stdout, process.stderr])
  output.on('error', error => {
    if (error.code !== 'EPIPE') throw error
  })

try {
  const { startProgram } = await import('./program.mjs')
  await startProgram('main')
} catch (error) {
  process.stderr.write(
    `This is a fault of Underlid, not of your files. Please report it with the text below.\n${error.stack ?? error}\n`
  )
  process.exitCode = 3
}
