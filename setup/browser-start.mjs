import { readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * Starts the first browser that starts: `{ browser, place, failures }`, without `browser` where none did. `launch` is puppeteer's.
 * Where its sandbox does not work, it is started without: what it shows is our own page, without scripts and without a network.
 */
export async function startFirst(launch, places) {
  const failures = []
  sweepProfiles()
  for (const place of places) {
    for (const sandbox of process.getuid?.() === 0 ? [false] : [true, false]) {
      try {
        const browser = await launch(launchOptions(place, sandbox))
        closeOnSignals(browser)
        return { browser, place, failures }
      } catch (error) {
        if (!sandbox) failures.push({ path: place.path, reason: reasonOf(error) })
      }
    }
  }
  return { failures }
}

const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 }

/** An interrupt ends the browser, takes its temporary profile along, and ends us with the usual code. */
function closeOnSignals(browser) {
  const child = browser.process()
  const profile = child?.spawnargs.find(arg => arg.startsWith('--user-data-dir='))?.slice('--user-data-dir='.length)
  const sweep = () => quietly(() => profile && rmSync(profile, { recursive: true, force: true, maxRetries: 5 }))
  const end = signal => {
    quietly(() => child?.kill('SIGKILL'))
    // Its helpers are a process group of their own, except on Windows.
    quietly(() => process.kill(-child.pid, 'SIGKILL'))
    sweep()
    process.exit(SIGNALS[signal])
  }
  child?.once('exit', sweep)
  for (const signal of Object.keys(SIGNALS)) process.on(signal, end)
  browser.once('disconnected', () => {
    for (const signal of Object.keys(SIGNALS)) process.off(signal, end)
  })
}

const PROFILE = /^underlid-browser-(\d+)-\d+$/
let profiles = 0

/** A browser's temporary folder carries the number of our process, so that a later run knows what a killed one left. */
function profileFolder() {
  profiles += 1
  return join(tmpdir(), `underlid-browser-${process.pid}-${profiles}`)
}

/** What is left of runs that were killed: nobody else could tidy up after them. */
function sweepProfiles() {
  quietly(() => {
    for (const name of readdirSync(tmpdir())) {
      const pid = Number(PROFILE.exec(name)?.[1])
      if (pid && !isRunning(pid)) quietly(() => rmSync(join(tmpdir(), name), { recursive: true, force: true }))
    }
  })
}

function isRunning(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

function quietly(work) {
  try {
    work()
  } catch {
    // There is nobody left to tell.
  }
}

/**
 * How a browser is started, for puppeteer. Through a pipe, so that it ends with us however we end; no name is ever resolved, so
 * that nothing it shows can reach a network.
 */
function launchOptions(place, sandbox) {
  return {
    executablePath: place.path,
    headless: place.shell || /headless.shell/.test(place.path) ? 'shell' : true,
    pipe: true,
    timeout: 30_000,
    userDataDir: profileFolder(),
    // Seen to by closeOnSignals.
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    env: { ...process.env, ...place.env },
    args: [
      ...(sandbox ? [] : ['--no-sandbox']),
      '--host-resolver-rules=MAP * ~NOTFOUND',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--disable-extensions',
      '--disable-background-networking',
      '--font-render-hinting=none'
    ]
  }
}

/** The line of a failed start that tells most. */
export function reasonOf(error) {
  const lines = String(error?.message ?? error)
    .split('\n')
    .map(line => line.trim())
    .filter(Boolean)
  return (
    lines.find(line => /error while loading|cannot open shared|ENOENT|EACCES|Exec format|not found/i.test(line)) ??
    lines[0] ??
    'no reason given'
  )
}
