#!/usr/bin/env node
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from './browser.mjs'
import { nodeProblem } from './node-version.mjs'
import { stop } from './tell.mjs'

// The command, from any folder. The sources are TypeScript; tsx from the project's own packages reads them.
const problem = nodeProblem(process.versions.node)
if (problem) stop(problem)
if (!existsSync(join(PROJECT, 'node_modules', 'tsx')))
  stop(`The packages are not installed yet. Run this once, in ${PROJECT}:`, '  npm start')

const { register } = await import('tsx/esm/api')
register()
await import('../src/cli/main.ts')
