import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { join } from 'node:path'
import { PROJECT } from '../../setup/browser.mjs'

export interface SeparateBuild {
  /** Builds all in a process of its own; `said` is what that told, in a line or more. */
  readonly run: () => Promise<{ readonly isBuilt: boolean; readonly said: string }>
  readonly stop: () => void
}

/** A build beside this process, which goes on answering meanwhile. */
export function separateBuild({
  sites,
  out,
  on
}: {
  readonly sites: string
  readonly out: string
  readonly on?: string
}): SeparateBuild {
  let child: ChildProcess | undefined
  const run: SeparateBuild['run'] = () =>
    new Promise((resolve, reject) => {
      const args = ['build', '--sites', sites, '--out', out, ...(on === undefined ? [] : ['--on', on]), '--quiet']
      const own = spawn(process.execPath, [join(PROJECT, 'setup', 'underlid.mjs'), ...args], {
        stdio: ['ignore', 'pipe', 'pipe']
      })
      child = own
      const said = { out: '', err: '' }
      own.stdout.on('data', text => (said.out += String(text)))
      own.stderr.on('data', text => (said.err += String(text)))
      own.once('error', reject)
      own.once('close', code => {
        child = undefined
        const isBuilt = said.out !== ''
        resolve({ isBuilt: isBuilt && code !== null, said: `${said.err}${said.out}`.trim() })
      })
    })
  return { run, stop: () => void child?.kill() }
}
