import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { browserMark, isNoBrowser, withBrowser } from '../../src/render/browser.ts'

const MODULE = fileURLToPath(new URL('../../src/render/browser.ts', import.meta.url))
let folder = ''
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'underlid-open-'))))
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** A process that opens a browser, says so with the browser's process id, and waits. */
function holder() {
  const script = join(folder, 'hold.mts')
  writeFileSync(
    script,
    `import { withBrowser } from ${JSON.stringify(MODULE)}
     await withBrowser(async ({ browser }) => {
       console.log('open', browser.process().pid)
       await new Promise(resolve => setTimeout(resolve, 60_000))
     })`
  )
  return spawn(process.execPath, ['--import', 'tsx', script], { stdio: ['ignore', 'pipe', 'inherit'] })
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    // A process that has ended but was not yet fetched by its parent is still listed.
    return !spawnSync('ps', ['-o', 'stat=', '-p', String(pid)], { encoding: 'utf8' }).stdout.startsWith('Z')
  } catch {
    return false
  }
}

async function isGoneSoon(pid: number): Promise<boolean> {
  for (let tries = 0; tries < 100; tries += 1) {
    if (!isRunning(pid)) return true
    await new Promise(resolve => setTimeout(resolve, 50))
  }
  return false
}

describe('a lent browser', () => {
  it('is closed when the work is done, and when the work throws', async () => {
    const pids: number[] = []
    const done = await withBrowser(({ browser }) => {
      pids.push(browser.process()?.pid ?? 0)
      return Promise.resolve('done')
    })
    expect(isNoBrowser(done) ? done.told.join('\n') : done).toBe('done')
    const failing = withBrowser(({ browser }) => {
      pids.push(browser.process()?.pid ?? 0)
      return Promise.reject(new Error('work failed'))
    })
    await expect(failing).rejects.toThrow('work failed')
    expect(pids).toHaveLength(2)
    for (const pid of pids) expect(await isGoneSoon(pid)).toBe(true)
  })

  it.each(['SIGINT', 'SIGTERM', 'SIGKILL'] as const)('does not outlive us on %s', async signal => {
    const child = holder()
    const said = await new Promise<string>(resolve => child.stdout.once('data', data => resolve(String(data))))
    const browser = Number(said.split(' ')[1])
    expect(isRunning(browser)).toBe(true)
    const ended = new Promise(resolve => child.once('exit', (code, by) => resolve(by ?? code)))
    child.kill(signal)
    expect(await ended).toBe({ SIGINT: 130, SIGTERM: 143, SIGKILL: 'SIGKILL' }[signal])
    expect(await isGoneSoon(browser)).toBe(true)
  })
})

describe('without a browser', () => {
  it('the answer says so instead of throwing, so that pages and data are still written', async () => {
    const before = process.env.UNDERLID_BROWSER
    process.env.UNDERLID_BROWSER = 'none'
    try {
      const answer = await withBrowser(() => Promise.resolve('printed'))
      expect(isNoBrowser(answer) && answer.told.join(' ')).toContain('UNDERLID_BROWSER')
      expect(browserMark()).toBeUndefined()
    } finally {
      if (before === undefined) delete process.env.UNDERLID_BROWSER
      else process.env.UNDERLID_BROWSER = before
    }
  })

  it('with one, its mark stays the same from call to call', () => {
    expect(browserMark()).toMatch(/ \d+ \d+$/u)
    expect(browserMark()).toBe(browserMark())
  })
})
