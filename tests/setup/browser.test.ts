import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { reasonOf, startFirst } from '../../setup/browser-start.mjs'
import { browserPlaces, browsersThere, noBrowserMessage } from '../../setup/browser.mjs'
import type { BrowserPlace } from '../../setup/browser.mjs'
import { setupFile } from './setup-file.ts'

interface Way {
  readonly words: string
  readonly install: () => void
}
const { ensureBrowser } = await setupFile<{
  ensureBrowser: (options: {
    say: (line: string) => void
    ways: readonly Way[]
    places?: () => readonly BrowserPlace[]
  }) => Promise<BrowserPlace | undefined>
}>('browser-install.mjs')

let home = ''
beforeEach(() => (home = mkdtempSync(join(tmpdir(), 'underlid-browser-'))))
afterEach(() => rmSync(home, { recursive: true, force: true }))

function program(...parts: readonly string[]): string {
  const path = join(home, ...parts)
  mkdirSync(join(path, '..'), { recursive: true })
  writeFileSync(path, '#!/bin/sh\nexit 1\n')
  chmodSync(path, 0o755)
  return path
}

describe('looking for a browser', () => {
  it('tries the settings first, then shells wherever they are, then PATH and the usual places', () => {
    const cached = program('cache', 'chrome-headless-shell', 'linux-1.0', 'shell', 'chrome-headless-shell')
    const places = browserPlaces({
      env: {
        UNDERLID_BROWSER: '/a',
        PUPPETEER_EXECUTABLE_PATH: '/b',
        PATH: '/p',
        PUPPETEER_CACHE_DIR: join(home, 'cache')
      },
      platform: 'linux',
      home
    }).map(place => place.path)
    const embedded = places.find(path => /setup.browser.node_modules.*chromium$/u.test(path)) ?? ''
    const inOrder = ['/a', '/b', '/p/chrome-headless-shell', cached, embedded, '/p/chromium', '/usr/bin/chromium']
    const order = inOrder.map(path => places.indexOf(path))
    expect(order).not.toContain(-1)
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })

  it('takes the newest that puppeteer keeps', () => {
    const versions = ['linux-120.0.1', 'linux-143.0.2'].map(version =>
      program('.cache', 'puppeteer', 'chrome-headless-shell', version, 'shell', 'chrome-headless-shell')
    )
    const found = browserPlaces({ env: {}, platform: 'linux', home }).filter(place => versions.includes(place.path))
    expect(found.map(place => place.path)).toEqual(versions.toReversed())
  })

  it.each([
    ['darwin', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['win32', 'Edge']
  ])('knows the usual places on %s', (platform, part) => {
    const env = { PROGRAMFILES: 'C:\\Program Files', LOCALAPPDATA: 'C:\\Users\\x' }
    expect(browserPlaces({ env, platform, home }).some(place => place.path.includes(part))).toBe(true)
  })

  it('names a file once, however many ways lead to it', () => {
    const real = program('real', 'chromium')
    mkdirSync(join(home, 'bin'))
    symlinkSync(real, join(home, 'bin', 'chromium'))
    const found = browsersThere({ env: { UNDERLID_BROWSER: real, PATH: join(home, 'bin') }, platform: 'linux', home })
    expect(found.filter(place => place.path.startsWith(home))).toHaveLength(1)
  })

  it('looks nowhere when told that none is wanted', () => {
    expect(browserPlaces({ env: { UNDERLID_BROWSER: 'none', PATH: '/usr/bin' } })).toEqual([])
    expect(noBrowserMessage([], { env: { UNDERLID_BROWSER: 'none' } }).join(' ')).toContain('"none"')
  })
})

describe('when no browser prints', () => {
  it('the message lists where it looked, what failed and why, and what to do', () => {
    const env = { UNDERLID_BROWSER: '/opt/mine', PATH: '/p1:/p2' }
    const lines = noBrowserMessage([{ path: '/opt/mine', reason: 'no such file' }], {
      env,
      platform: 'linux',
      home
    }).join('\n')
    for (const part of [
      'UNDERLID_BROWSER: /opt/mine',
      'PATH',
      '/usr/bin',
      'puppeteer',
      '/opt/mine: no such file',
      'npm start'
    ])
      expect(lines).toContain(part)
  })

  it('a start that fails gives way to the next, and is remembered with its reason', async () => {
    const tried: string[] = []
    const launch = (options: { executablePath?: string }): Promise<never> => {
      tried.push(options.executablePath ?? '')
      return Promise.reject(new Error('Failed to launch\n/x: error while loading shared libraries: libnss3.so'))
    }
    const { browser, failures } = await startFirst(launch, [
      { path: '/one', from: 'PATH' },
      { path: '/two', from: 'PATH' }
    ])
    expect(browser).toBeUndefined()
    expect([...new Set(tried)]).toEqual(['/one', '/two'])
    expect(failures.map(failure => failure.reason)).toEqual(
      Array(2).fill('/x: error while loading shared libraries: libnss3.so')
    )
  })

  it('a program that starts and gives no answer is ended after its time, with all that it started', async () => {
    const { default: puppeteer } = await import('puppeteer')
    const path = program('silent')
    writeFileSync(path, `#!/bin/sh\necho $$ > "${home}/pid"\nsleep 600\n`)
    const { browser, failures } = await startFirst(options => puppeteer.launch(options), [{ path, from: 'PATH' }], 1)
    expect(browser).toBeUndefined()
    expect(failures).toEqual([{ path, reason: 'it gave no answer within 1 s' }])
    const group = readFileSync(join(home, 'pid'), 'utf8').trim()
    const left = (): string[] =>
      spawnSync('ps', ['-eo', 'pgid=,stat='], { encoding: 'utf8' })
        .stdout.split('\n')
        .filter(line => new RegExp(`^\\s*${group}\\s+[^Z]`, 'u').test(line))
    for (let wait = 0; wait < 50 && left().length > 0; wait += 1) await new Promise(resolve => setTimeout(resolve, 100))
    expect(left()).toEqual([])
    expect(readdirSync(tmpdir()).filter(name => name.startsWith(`underlid-browser-${process.pid}-`))).toEqual([])
  })

  it('a reason is one line, also where the error has many or none', () => {
    expect(reasonOf(new Error('first\nsecond'))).toBe('first')
    expect(reasonOf(new Error(''))).toBe('no reason given')
  })
})

describe('bringing a browser', () => {
  it('one that is there and prints is enough: nothing is installed', async () => {
    const said: string[] = []
    const never = { words: 'from nowhere', install: () => expect.unreachable('installed although one is there') }
    const place = await ensureBrowser({ say: line => said.push(line), ways: [never] })
    expect(place, said.join('\n')).toBeDefined()
    expect(existsSync(place?.path ?? '')).toBe(true)
    expect(said).toHaveLength(1)
  })

  it('a program that is no browser is passed over, each way is tried in turn and told of, and then where it was looked', async () => {
    const said: string[] = []
    const fake = { path: program('fake'), from: 'PATH' }
    const ways = [
      { words: 'from nowhere', install: () => expect.fail('no network') },
      { words: 'that brings the same', install: () => undefined }
    ]
    const place = await ensureBrowser({ say: line => said.push(line), ways, places: () => [fake] })
    expect(place).toBeUndefined()
    const told = said.join('\n')
    expect(told).toMatch(/from nowhere …\n.*no network\n.*that brings the same …\n[^]*Looked in:/u)
    expect(told).toContain(`${fake.path}: `)
  })

  it('a way that brings one ends the search', async () => {
    const [real] = browsersThere()
    let there: readonly BrowserPlace[] = []
    const ways = [
      { words: 'that works', install: () => void (there = real ? [real] : []) },
      { words: 'that is not needed', install: () => expect.unreachable('went on after one was found') }
    ]
    const place = await ensureBrowser({ say: () => undefined, ways, places: () => there })
    expect(place?.path).toBe(real?.path)
  })

  it('the lock file of the embedded browser is there, with one version and a hash for each package', () => {
    const lock = JSON.parse(
      readFileSync(new URL('../../setup/browser/package-lock.json', import.meta.url), 'utf8')
    ) as {
      packages: Record<string, { version?: string; integrity?: string }>
    }
    const packages = Object.entries(lock.packages).filter(([path]) => path !== '')
    expect(packages.map(([path]) => path)).toContain('node_modules/@sparticuz/chromium')
    for (const [path, entry] of packages)
      expect(entry, path).toMatchObject({
        version: expect.stringMatching(/^\d/u),
        integrity: expect.stringMatching(/^sha512-/u)
      })
  })
})
