import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { childEnv } from './tell.mjs'

const STAMP = '.underlid-lock'

/**
 * Brings the packages in a folder to what its lock file says. Answers 'there', 'installed', or throws with words for the reader.
 * The stamp is written last, so that an install that was killed is done again.
 */
export function ensurePackages(folder, { install = runNpmCi } = {}) {
  if (packagesAreThere(folder)) return 'there'
  rmSync(join(folder, 'node_modules', STAMP), { force: true })
  install(folder)
  writeFileSync(join(folder, 'node_modules', STAMP), lockHash(folder))
  return 'installed'
}

/** True where the stamp is that of the lock file, or npm's own record of what it installed agrees with the lock file. */
export function packagesAreThere(folder) {
  const modules = join(folder, 'node_modules')
  if (readText(join(modules, STAMP)) === lockHash(folder)) return true
  if (!installedMatchesLock(folder)) return false
  writeFileSync(join(modules, STAMP), lockHash(folder))
  return true
}

function installedMatchesLock(folder) {
  const installed = readJson(join(folder, 'node_modules', '.package-lock.json'))
  if (!installed) return false
  const wanted = readJson(join(folder, 'package-lock.json')).packages
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true
    const have = installed.packages[path]
    if (!have) return entry.optional === true || entry.devOptional === true || entry.peer === true
    return have.version === entry.version && have.integrity === entry.integrity && existsSync(join(folder, path))
  })
}

function lockHash(folder) {
  return createHash('sha256')
    .update(readFileSync(join(folder, 'package-lock.json')))
    .digest('hex')
}

/** `npm ci` by the npm that runs us, else by the one on the path. */
function runNpmCi(folder) {
  const result = runNpm(['ci', '--ignore-scripts', '--prefix', folder, '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: folder
  })
  if (result.status === 0) return
  const said = `${result.stdout ?? ''}${result.stderr ?? ''}`.trim().split('\n').slice(-6)
  throw new Error(
    ['The packages could not be installed. npm said:', ...said.map(line => `  ${line}`)].join('\n') +
      '\nA first run needs the package registry; later runs need no network.'
  )
}

export function runNpm(args, { cwd, env = process.env } = {}) {
  const own = process.env.npm_execpath
  const options = { cwd, encoding: 'utf8', env: childEnv(env, false), stdio: ['ignore', 'pipe', 'pipe'] }
  if (own && /npm-cli\.[cm]?js$/.test(own)) return spawnSync(process.execPath, [own, ...args], options)
  const windows = process.platform === 'win32'
  return spawnSync(windows ? 'npm.cmd' : 'npm', args, { ...options, shell: windows })
}

function readText(path) {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return undefined
  }
}

function readJson(path) {
  const text = readText(path)
  return text === undefined ? undefined : JSON.parse(text)
}
