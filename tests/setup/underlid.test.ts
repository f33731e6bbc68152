import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

const PROJECT = fileURLToPath(new URL('../../', import.meta.url))
let copy = ''

/** A project that holds only the setup, and a command of one line. */
beforeEach(() => {
  copy = mkdtempSync(join(tmpdir(), 'underlid-command-'))
  mkdirSync(join(copy, 'setup'))
  mkdirSync(join(copy, 'src', 'cli'), { recursive: true })
  for (const name of ['underlid.mjs', 'browser.mjs', 'node-version.mjs', 'program.mjs', 'tell.mjs'])
    cpSync(join(PROJECT, 'setup', name), join(copy, 'setup', name))
  writeFileSync(join(copy, 'package.json'), '{ "type": "module" }')
})
afterEach(() => rmSync(copy, { recursive: true, force: true }))

function underlid(main: string, args: readonly string[], cwd = copy) {
  writeFileSync(join(copy, 'src', 'cli', 'main.ts'), main)
  const env = { ...process.env, NODE_OPTIONS: '' }
  return spawnSync(process.execPath, [join(copy, 'setup', 'underlid.mjs'), ...args], { cwd, env, encoding: 'utf8' })
}

describe('the command', () => {
  it('without packages says what to run, and ends with 2', () => {
    const { status, stdout, stderr } = underlid('', ['check'])
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toContain('npm start')
    expect(stderr).not.toContain('at ')
  })

  it('runs TypeScript from any folder, hands on its words, and ends with its exit code', () => {
    symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'))
    const main =
      'const words: string[] = process.argv.slice(2)\nconsole.log(words.join("|"), process.cwd())\nprocess.exitCode = 1'
    const elsewhere = mkdtempSync(join(tmpdir(), 'underlid-elsewhere-'))
    const { status, stdout } = underlid(main, ['check', '--sites', 'my sites'], elsewhere)
    rmSync(elsewhere, { recursive: true })
    expect(stdout).toContain('check|--sites|my sites')
    expect(stdout).toContain('underlid-elsewhere-')
    expect(status).toBe(1)
  })

  it('that cannot even start says whose fault that is, and ends with 3', () => {
    symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'))
    const { status, stderr } = underlid("import './not-there.ts'", ['check'])
    expect(stderr).toMatch(/^This is a fault of Underlid, not of your files\./u)
    expect(status).toBe(3)
  })

  it('ends as it would have when its output is no longer read', () => {
    symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'))
    const main = `for (let i = 0; i < 50_000; i += 1) console.log('a line that nobody reads', i)
      await new Promise(resolve => setTimeout(resolve, 50))
      console.error('came to its end')
      process.exitCode = 1`
    writeFileSync(join(copy, 'src', 'cli', 'main.ts'), main)
    const shell = `"${process.execPath}" setup/underlid.mjs | head -1; exit "\${PIPESTATUS[0]}"`
    const { status, stderr } = spawnSync('bash', ['-c', shell], { cwd: copy, encoding: 'utf8', timeout: 30_000 })
    expect(stderr).toBe('came to its end\n')
    expect(status).toBe(1)
  })
})
