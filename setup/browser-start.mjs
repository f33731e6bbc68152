import { rmSync } from 'node:fs'

/**
 * Starts the first browser that starts: `{ browser, place, failures }`, without `browser` where none did. `launch` is puppeteer's.
 * Where its sandbox does not work, it is started without: what it shows is our own page, without scripts and without a network.
 */
export async function startFirst(launch, places) {
  const failures = []
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
  const end = signal => {
    quietly(() => child?.kill('SIGKILL'))
    // Its helpers are a process group of their own, except on Windows.
    quietly(() => process.kill(-child.pid, 'SIGKILL'))
    quietly(() => profile && rmSync(profile, { recursive: true, force: true, maxRetries: 5 }))
    process.exit(SIGNALS[signal])
  }
  for (const signal of Object.keys(SIGNALS)) process.on(signal, end)
  browser.once('disconnected', () => {
    for (const signal of Object.keys(SIGNALS)) process.off(signal, end)
  })
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
