import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { brokenOutput } from '../faults/state.ts'
import { commanding } from './try-case.ts'

const COMMAND = resolve(import.meta.dirname, '../../setup/underlid.mjs')

/** What the command itself answers, in a process of its own: exit code, words, places, and what it wrote. */
export function tryCommand(
  args: readonly string[],
  cwd: string
): { readonly code: number | null; readonly wrong: string[] } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024
  })
  const text = `${stdout}${stderr}`
  const out = join(cwd, 'dist')
  return {
    code: status,
    wrong: [
      ...(status === 0 || status === 1 || status === 2
        ? []
        : [`${args[0]} ended with ${status}: ${stderr.slice(-600)}`]),
      ...(/^\s+at .+:\d+:\d+\)?$/mu.test(text) || text.includes('This is a fault of Underlid')
        ? ['shows a trace']
        : []),
      ...commanding(text).map(sign => `commands a terminal with ${sign}`),
      ...(text.trim() === '' ? ['says nothing'] : []),
      ...(args[0] === 'check' ? withoutPlace(stdout) : []),
      ...(status === 2 && stderr.trim() === '' && !stdout.startsWith('{') ? ['is refused without a word'] : []),
      ...(args[0] === 'build' && existsSync(out) ? brokenOutput(out) : [])
    ]
  }
}

/** Each finding begins with its place: "sites/x/site.md:41:7  error  file/yaml". */
function withoutPlace(text: string): string[] {
  return text
    .split('\n')
    .filter(line => / {2}(?:error|warning|note) {2}[a-z]+\/[a-z-]+$/u.test(line) && !/^\S.*:\d+:\d+ {2}/u.test(line))
    .map(line => `a finding without a place: ${line.slice(0, 200)}`)
}
