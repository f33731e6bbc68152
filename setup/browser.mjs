import { existsSync, readdirSync, realpathSync, statSync } from 'node:fs'
import { homedir } from 'node:os'
import { delimiter, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/**
 * Where a browser for printing may stand, in the order of trying. The one list that both the setup and the printing use.
 * Nothing here starts anything.
 */
export const PROJECT = resolve(fileURLToPath(new URL('..', import.meta.url)))
export const EMBEDDED = join(PROJECT, 'setup', 'browser')
/** Where the browser that came inside a package is unpacked. Goes when the packages are installed anew. */
export const UNPACKED = join(EMBEDDED, 'node_modules', '.unpacked')

const SETTINGS = ['UNDERLID_BROWSER', 'PUPPETEER_EXECUTABLE_PATH']

const NAMES = {
  linux: [
    'chromium-headless-shell',
    'chrome-headless-shell',
    'chromium',
    'chromium-browser',
    'google-chrome-stable',
    'google-chrome',
    'chrome',
    'microsoft-edge-stable',
    'microsoft-edge'
  ],
  darwin: ['chrome-headless-shell', 'chromium', 'google-chrome', 'chrome'],
  win32: ['chrome-headless-shell.exe', 'chrome.exe', 'chromium.exe', 'msedge.exe']
}

const MAC_APPS = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge'
]

const WINDOWS_PROGRAMS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe'
]

/**
 * Every place to look, whether or not anything is there: `{ path, from, env? }`. `from` says in words whose place it is.
 * UNDERLID_BROWSER=none gives an empty list.
 */
export function browserPlaces({ env = process.env, platform = process.platform, home = homedir() } = {}) {
  if (env.UNDERLID_BROWSER === 'none') return []
  const places = [
    ...fromPath(env, platform),
    ...usual(env, platform, home),
    ...puppeteers(env, platform, home),
    ...embedded(platform)
  ]
  return [...fromSettings(env), ...places.filter(isShell), ...places.filter(place => !isShell(place))]
}

/** Made for work without a window: they start and print about twice as fast as the full browsers. */
function isShell(place) {
  return place.shell === true || /headless.shell/.test(place.path)
}

/** The places where a file stands, each file once. */
export function browsersThere(options) {
  const seen = new Set()
  return browserPlaces(options).filter(place => {
    if (!isFile(place.path)) return false
    const key = `${realpathSync(place.path)}\n${place.env ? 'own libraries' : ''}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

/** What a reader is told when there is none: where it was looked, and what to do. `failures` are `{ path, reason }`. */
export function noBrowserMessage(failures = [], options = {}) {
  if ((options.env ?? process.env).UNDERLID_BROWSER === 'none')
    return ['No browser is used, since UNDERLID_BROWSER is "none". Unset it to print PDFs.']
  return [
    'No browser was found that can print, so no PDF can be made. HTML and data outputs need none.',
    ...(failures.length === 0 ? [] : ['Tried, and it did not start:']),
    ...failures.map(({ path, reason }) => `  ${path}: ${reason}`),
    'Looked in:',
    ...groupPlaces(browserPlaces(options)).map(line => `  ${line}`),
    'What helps, any one of these:',
    '  run npm start with a network, which brings one;',
    '  install Chromium, Chrome or Edge;',
    '  set UNDERLID_BROWSER to the path of one.'
  ]
}

function fromSettings(env) {
  return SETTINGS.filter(name => env[name]).map(name => ({ path: env[name], from: `the setting ${name}` }))
}

function fromPath(env, platform) {
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter).filter(Boolean)
  return names(platform).flatMap(name => folders.map(folder => ({ path: join(folder, name), from: 'PATH' })))
}

function usual(env, platform, home) {
  if (platform === 'darwin')
    return ['/Applications', join(home, 'Applications')].flatMap(folder =>
      MAC_APPS.map(app => ({ path: join(folder, app), from: folder }))
    )
  if (platform === 'win32')
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
      .filter(Boolean)
      .flatMap(folder => WINDOWS_PROGRAMS.map(program => ({ path: join(folder, program), from: folder })))
  return [
    '/usr/bin',
    '/usr/local/bin',
    '/snap/bin',
    '/usr/lib/chromium',
    '/usr/lib/chromium-headless-shell',
    '/opt/google/chrome'
  ].flatMap(folder => names(platform).map(name => ({ path: join(folder, name), from: folder })))
}

/** puppeteer keeps `<cache>/<browser>/<platform-version>/<folder>/<program>`; the newest version first. */
function puppeteers(env, platform, home) {
  const cache = env.PUPPETEER_CACHE_DIR ?? join(home, '.cache', 'puppeteer')
  const programs =
    platform === 'darwin'
      ? ['chrome-headless-shell', 'Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing']
      : platform === 'win32'
        ? ['chrome-headless-shell.exe', 'chrome.exe']
        : ['chrome-headless-shell', 'chrome']
  const found = ['chrome-headless-shell', 'chrome'].flatMap(browser =>
    folders(join(cache, browser))
      .reverse()
      .flatMap(version => folders(version))
      .flatMap(folder => programs.map(program => join(folder, program)))
  )
  return (found.length === 0 ? [join(cache, 'chrome-headless-shell')] : found).map(path => ({ path, from: cache }))
}

/** As it is, then with the libraries that came in the same package, for machines that lack them. */
function embedded(platform) {
  if (platform !== 'linux') return []
  const place = { path: join(UNPACKED, 'chromium'), from: UNPACKED, shell: true }
  return [
    place,
    { ...place, env: { LD_LIBRARY_PATH: join(UNPACKED, 'al2023', 'lib'), FONTCONFIG_PATH: join(UNPACKED, 'fonts') } }
  ]
}

function names(platform) {
  return NAMES[platform] ?? NAMES.linux
}

function groupPlaces(places) {
  return [
    ...new Set(
      places.map(place => (place.from.startsWith('the setting') ? `${place.from}: ${place.path}` : place.from))
    )
  ]
}

function isFile(path) {
  try {
    return statSync(path).isFile()
  } catch {
    return false
  }
}

function folders(path) {
  if (!existsSync(path)) return []
  return readdirSync(path, { withFileTypes: true })
    .filter(entry => entry.isDirectory())
    .map(entry => join(path, entry.name))
    .sort()
}
