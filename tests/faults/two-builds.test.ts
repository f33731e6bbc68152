import { spawn, spawnSync } from 'node:child_process'
import { chmodSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { writeOutputs } from '../../src/build/output-stage.ts'
import { ON, PROJECT, underlid, workFolder } from '../e2e/support.ts'
import { brokenOutput, treeHash } from './state.ts'

const folder = workFolder(['kestrel-cross'])
const dist = join(folder, 'dist')
const command = join(PROJECT, 'setup/underlid.mjs')
const first = underlid(['print', '--on', ON], folder)

interface Ended {
  readonly code: number | null
  readonly said: string
}

function started(args: readonly string[], env: NodeJS.ProcessEnv = process.env): Promise<Ended> {
  return new Promise(done => {
    const child = spawn(process.execPath, [command, ...args], { cwd: folder, env })
    let said = ''
    for (const stream of [child.stdout, child.stderr]) stream.on('data', chunk => (said += String(chunk)))
    child.once('close', code => done({ code, said }))
  })
}

/** In a shell, so that a limit of the machine holds for the run alone. */
function limited(limit: string, args: readonly string[]): Ended {
  const shell = `${limit}; exec "$0" "$@"`
  const { status, stdout, stderr } = spawnSync('bash', ['-c', shell, process.execPath, command, ...args], {
    cwd: folder,
    encoding: 'utf8'
  })
  return { code: status, said: `${stdout}${stderr}` }
}

const trace = /^\s+at .+:\d+:\d+\)?$/mu

describe('what a machine may do to a build', { timeout: 300_000 }, () => {
  it('two at once: each is done or says to wait, and the output is whole', async () => {
    expect(first.code, first.err).toBe(0)
    const ended = await Promise.all([started(['build', '--on', ON]), started(['build', '--on', ON])])
    for (const { code, said } of ended) {
      expect(said).not.toMatch(trace)
      if (code !== 0) expect(said).toMatch(/Another run \(process \d+\) is writing .*\nWait until it has ended/u)
      expect([0, 2]).toContain(code)
    }
    expect(brokenOutput(dist)).toEqual([])
  })

  it('a disk that takes no more: says so, ends with 2, and the last output is as it was', () => {
    const before = treeHash(dist)
    const text = readFileSync(join(folder, 'sites/kestrel-cross/site.md'), 'utf8')
    writeFileSync(join(folder, 'sites/kestrel-cross/site.md'), text.replace(/^revision: .*$/mu, 'revision: "77"'))
    // Blocks of 1,024 bytes: pages fit, the sheet of all findings does not.
    const { code, said } = limited('ulimit -f 40', ['build', '--on', ON])
    writeFileSync(join(folder, 'sites/kestrel-cross/site.md'), text)
    expect(said).toContain('past the limit')
    expect(said).not.toMatch(trace)
    expect(code).toBe(2)
    expect(treeHash(dist)).toBe(before)
    expect(readdirSync(folder).filter(name => /^dist\.(?:next|old)/u.test(name))).toEqual([])
  })

  it.each([-1_780_000_000_000, 2_300_000_000_000])(
    'a clock that is %i ms off: the day is that of the clock, nothing falls over, and the next build at the right time is whole',
    async off => {
      const stub = `const R=Date;globalThis.Date=class extends R{constructor(...a){a.length?super(...a):super(R.now()+${off})}static now(){return R.now()+${off}}}`
      const env = { ...process.env, NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(stub)}` }
      const { code, said } = await started(['build'], env)
      expect(said).toContain(`built as of ${new Date(Date.now() + off).getUTCFullYear()}`)
      expect(said).not.toMatch(trace)
      expect(code, said).toBe(0)
      expect(brokenOutput(dist)).toEqual([])
      const next = await started(['build', '--on', ON])
      expect(next.code, next.said).toBe(0)
      expect(brokenOutput(dist)).toEqual([])
    }
  )

  it('an output that may not be written: says so, and nothing is written', async () => {
    const [closed, hidden] = [join(folder, 'closed'), join(folder, 'hidden')]
    mkdirSync(closed)
    mkdirSync(hidden)
    chmodSync(folder, 0o755)
    chmodSync(closed, 0o555)
    chmodSync(hidden, 0o000)
    // The administrator may write everything, so the writing is done as nobody.
    if (process.getuid?.() === 0) process.seteuid?.(65_534)
    try {
      for (const place of [closed, hidden]) {
        const writing = writeOutputs(join(place, 'dist'), [{ path: 'a.html', content: 'a' }])
        await expect(writing).rejects.toThrow(
          /^Reading or writing is not allowed: .*\nThe last output in .* is as it was\.$/u
        )
      }
    } finally {
      if (process.getuid?.() === 0) process.seteuid?.(0)
      chmodSync(hidden, 0o755)
    }
    expect(readdirSync(closed)).toEqual([])
  })

  it('a browser that dies while it prints: the document is named, the last print stays, the pages are written', async () => {
    const dying = join(folder, 'dying-browser')
    writeFileSync(dying, `#!/bin/sh\nexit 9\n`)
    chmodSync(dying, 0o755)
    const pdf = join(dist, 'print/kestrel-cross-binder.pdf')
    const before = readFileSync(pdf)
    const env = { ...process.env, UNDERLID_BROWSER: dying }
    const { code, said } = await started(['print', '--on', '2026-05-02'], env)
    expect(said).not.toMatch(trace)
    expect([0, 2]).toContain(code)
    if (code === 0) expect(said).toContain('printed')
    else expect(readFileSync(pdf).equals(before)).toBe(true)
    expect(brokenOutput(dist)).toEqual([])
  })
})
