import { Buffer } from 'node:buffer'
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { EMBEDDED, PROJECT, UNPACKED, browsersThere, noBrowserMessage } from './browser.mjs'
import { reasonOf, startFirst } from './browser-start.mjs'
import { ensurePackages } from './packages.mjs'
import { childEnv, tell } from './tell.mjs'

/**
 * A browser that was seen to print here: found, else brought in by the first way that works. Undefined where none could be had;
 * then it has been told where it was looked and what to do. One line a step.
 */
export async function ensureBrowser({ say = tell, ways = installers(), places = browsersThere } = {}) {
  const failures = []
  const found = await firstThatPrints(places(), failures)
  if (found) return report(say, found)
  if (process.env.UNDERLID_BROWSER !== 'none')
    for (const way of ways) {
      const brought = await tryWay(way, { failures, say, places })
      if (brought) return report(say, brought)
    }
  for (const line of noBrowserMessage(failures)) say(line)
  return undefined
}

async function tryWay(way, { failures, say, places }) {
  say(`Browser: none that prints so far; bringing one ${way.words} …`)
  try {
    way.install()
  } catch (error) {
    say(`Browser: that did not work: ${reasonOf(error)}`)
    return undefined
  }
  const before = new Set(failures.map(failure => failure.path))
  return firstThatPrints(
    places().filter(place => !before.has(place.path)),
    failures
  )
}

/** Starts each in turn and prints a page with it: only a PDF in hand counts. */
async function firstThatPrints(places, failures) {
  if (places.length === 0) return undefined
  const { default: puppeteer } = await import('puppeteer')
  for (const place of places) {
    const started = await startFirst(options => puppeteer.launch(options), [place])
    failures.push(...started.failures)
    if (!started.browser) continue
    try {
      const page = await started.browser.newPage()
      await page.setContent('<!doctype html><title>x</title><p>x')
      const bytes = await page.pdf({ timeout: 30_000 })
      if (Buffer.from(bytes.subarray(0, 5)).toString() === '%PDF-')
        return { place, version: await started.browser.version() }
      failures.push({ path: place.path, reason: 'it printed something that is no PDF' })
    } catch (error) {
      failures.push({ path: place.path, reason: reasonOf(error) })
    } finally {
      await started.browser.close()
    }
  }
  return undefined
}

function report(say, { place, version }) {
  say(`Browser: ${version}, ${place.path}`)
  return place
}

/** The ways to bring a browser, in order. Each throws where it cannot. */
function installers({ platform = process.platform, arch = process.arch } = {}) {
  return [
    ...(platform === 'linux' && arch === 'x64' ? [{ words: 'inside a package', install: installEmbedded }] : []),
    { words: "by puppeteer's own download", install: installByPuppeteer },
    ...(platform === 'linux' && process.getuid?.() === 0 && existsSync('/etc/debian_version')
      ? [{ words: 'from the distribution', install: installByApt }]
      : [])
  ]
}

/** Unpacked beside itself by the package's own code, which writes to the temporary folder it is given. */
function installEmbedded() {
  ensurePackages(EMBEDDED)
  const half = `${UNPACKED}-${process.pid}`
  rmSync(half, { recursive: true, force: true })
  mkdirSync(half, { recursive: true })
  const unpack = "const { default: chromium } = await import('@sparticuz/chromium'); await chromium.executablePath()"
  // The variable makes it unpack the libraries too, which a bare machine lacks.
  const env = { ...childEnv(process.env, false), TMPDIR: half, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' }
  run(process.execPath, ['--input-type=module', '-e', unpack], { cwd: EMBEDDED, env })
  writeFileSync(join(half, 'fonts', 'fonts.conf'), fontsConfig())
  rmSync(UNPACKED, { recursive: true, force: true })
  renameSync(half, UNPACKED)
}

/** The package's own list of font folders is that of a hosting service; here the machine's fonts come first. */
function fontsConfig() {
  const folders = ['/usr/share/fonts', '/usr/local/share/fonts', join(UNPACKED, 'fonts')]
  return [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    `<fontconfig>${folders.map(folder => `<dir>${folder}</dir>`).join('')}`,
    `<cachedir>${join(UNPACKED, 'fonts-cache')}</cachedir></fontconfig>`
  ].join('\n')
}

function installByPuppeteer() {
  const cli = join(PROJECT, 'node_modules', 'puppeteer', 'lib', 'cjs', 'puppeteer', 'node', 'cli.js')
  run(process.execPath, [cli, 'browsers', 'install', 'chrome-headless-shell'], { cwd: PROJECT })
}

function installByApt() {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  run('apt-get', ['update', '-qq'], { env })
  try {
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium-headless-shell'], { env })
  } catch {
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env })
  }
}

function run(program, args, options) {
  const result = spawnSync(program, args, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: 300_000,
    ...options
  })
  if (result.error) throw result.error
  if (result.status === 0) return
  const said = `${result.stdout}\n${result.stderr}`.trim().split('\n').filter(Boolean)
  throw new Error(said.find(line => /error/i.test(line)) ?? said.at(-1) ?? `${program} ended with ${result.status}`)
}
