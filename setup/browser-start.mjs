import { mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A start takes a third of a second, on a machine that does much else a few. The same setting stretches the time of a print. */
const START_SECONDS = Number(process.env.UNDERLID_PRINT_SECONDS) > 0 ? Number(process.env.UNDERLID_PRINT_SECONDS) : 30
const CLOSE_SECONDS = 5

/**
 * Starts the first browser that starts: `{ browser, place, failures }`, without `browser` where none did. `launch` is puppeteer's.
 * Where its sandbox does not work, it is started without: what it shows is our own page, without scripts and without a network.
 */
export async function startFirst(launch, places, seconds = START_SECONDS) {
  const failures = []
  sweepProfiles()
  for (const place of places) {
    for (const sandbox of process.getuid?.() === 0 ? [false] : [true, false]) {
      const { browser, reason, late } = await startOne(launch, { place, sandbox, seconds })
      if (browser) return { browser, place, failures }
      if (late || !sandbox) failures.push({ path: place.path, reason })
      // One that gives no answer gives none without its sandbox either.
      if (late) break
    }
  }
  return { failures }
}

/** Ends a browser at once, however it is, with its helpers, and takes its temporary folder along. */
export function endBrowser(browser) {
  ends.get(browser)?.()
}

/** Lets a browser close itself, and ends it where it does not. */
export async function closeBrowser(browser, seconds = CLOSE_SECONDS) {
  const late = lateness(seconds)
  await orLate(browser.close(), late.signal).catch(() => undefined)
  late.forget()
  endBrowser(browser)
}

const ends = new WeakMap()

/** `{ browser }`, or why there is none: `{ reason, late }`. An interrupt meanwhile ends it too. */
async function startOne(launch, { place, sandbox, seconds }) {
  const profile = profileFolder()
  const late = lateness(seconds)
  const settled = endOnSignals(() => {
    late.end()
    sweep(profile)
  })
  try {
    const options = { ...launchOptions(place, sandbox, profile), signal: late.signal }
    const browser = await orLate(launch(options), late.signal)
    await orLate(browser.version?.(), late.signal)
    seeToItsEnd(browser, profile)
    return { browser }
  } catch (error) {
    const isLate = late.signal.aborted
    late.end()
    sweep(profile)
    return { late: isLate, reason: isLate ? `it gave no answer within ${seconds} s` : reasonOf(error) }
  } finally {
    late.forget()
    settled()
  }
}

function seeToItsEnd(browser, profile) {
  const child = browser.process?.()
  let over = false
  const end = () => {
    // The number of one that has ended may soon be that of another.
    if (over) return
    quietly(() => child?.kill('SIGKILL'))
    // Its helpers are a process group of their own, except on Windows.
    quietly(() => child?.pid && process.kill(-child.pid, 'SIGKILL'))
    sweep(profile)
  }
  ends.set(browser, end)
  const settled = endOnSignals(end)
  child?.once('exit', () => {
    end()
    over = true
  })
  browser.once?.('disconnected', settled)
}

const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 }

/** An interrupt does `end`, and ends us with the usual code; until the answer is called. */
function endOnSignals(end) {
  const onSignal = signal => {
    quietly(end)
    process.exit(SIGNALS[signal])
  }
  for (const signal of Object.keys(SIGNALS)) process.on(signal, onSignal)
  return () => {
    for (const signal of Object.keys(SIGNALS)) process.off(signal, onSignal)
  }
}

/** A signal that is given after so many seconds, unless it is forgotten before. */
function lateness(seconds) {
  const controller = new AbortController()
  const timer = setTimeout(() => controller.abort(), seconds * 1000)
  return { signal: controller.signal, end: () => controller.abort(), forget: () => clearTimeout(timer) }
}

function orLate(work, signal) {
  return Promise.race([
    work,
    new Promise((_, refuse) => signal.addEventListener('abort', () => refuse(new Error('no answer')), { once: true }))
  ])
}

function sweep(profile) {
  quietly(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5 }))
}

const PROFILE = /^underlid-browser-(\d+)-\d+$/
let profiles = 0

/** A browser's temporary folder carries the number of our process, so that a later run knows what a killed one left. */
function profileFolder() {
  profiles += 1
  return join(tmpdir(), `underlid-browser-${process.pid}-${profiles}`)
}

/** What is left of runs that were killed, a browser that hangs included: nobody else could tidy up after them. */
function sweepProfiles() {
  quietly(() => {
    for (const name of readdirSync(tmpdir())) {
      const pid = Number(PROFILE.exec(name)?.[1])
      if (!pid || isRunning(pid)) continue
      endUsersOf(join(tmpdir(), name))
      sweep(join(tmpdir(), name))
    }
  })
}

/** Where the system lists its processes as files. */
function endUsersOf(profile) {
  if (process.platform !== 'linux') return
  for (const pid of readdirSync('/proc').filter(name => /^\d+$/.test(name)))
    quietly(() => {
      const args = readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0')
      if (args.includes(`--user-data-dir=${profile}`)) process.kill(Number(pid), 'SIGKILL')
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
function launchOptions(place, sandbox, profile) {
  return {
    executablePath: place.path,
    headless: place.shell || /headless.shell/.test(place.path) ? 'shell' : true,
    pipe: true,
    timeout: START_SECONDS * 1000,
    userDataDir: profile,
    // Each step has its own limit, which grows with the document.
    protocolTimeout: 0,
    // Seen to by endOnSignals.
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    env: { ...process.env, ...place.env, ...ownTemporary(profile) },
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

/** What a browser puts aside goes with its profile. A socket in there may have a path of a hundred signs at most. */
function ownTemporary(profile) {
  if (process.platform !== 'linux' || profile.length > 60) return {}
  mkdirSync(profile, { recursive: true, mode: 0o700 })
  return { TMPDIR: profile }
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
