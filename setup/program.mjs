import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { PROJECT } from './browser.mjs'

/** What is started: the command, and a second process of a large build. */
const ENTRIES = { main: 'src/cli/main.ts', worker: 'src/build/work-process.ts' }

const KEPT = join(PROJECT, '.cache', 'program')
const DAY_MS = 86_400_000

/**
 * Starts a part of the program. Reading a few hundred TypeScript files one by one takes longer than most of what is asked of them, so they are
 * put together into a few files of JavaScript, once for each state of the sources. Where that cannot be (a folder that may not be written, a
 * source that is being edited), tsx reads the sources as they are.
 */
export async function startProgram(name) {
  const file = await compiled(name)
  if (file) return import(pathToFileURL(file).href)
  const { register } = await import('tsx/esm/api')
  register()
  return import(new URL(`../${ENTRIES[name]}`, import.meta.url).href)
}

async function compiled(name) {
  try {
    const folder = join(KEPT, stateOf(join(PROJECT, 'src')))
    const file = join(folder, `${name}.mjs`)
    if (!existsSync(file)) await compile(folder)
    return file
  } catch {
    return undefined
  }
}

/** Another text for any byte of the sources that is another, and for any other version of what compiles and runs them. */
function stateOf(folder) {
  const hash = createHash('sha256').update(process.version)
  hash.update(readFileSync(join(PROJECT, 'package.json')))
  hash.update(readFileSync(new URL(import.meta.url)))
  for (const path of readdirSync(folder, { recursive: true }).sort()) {
    if (!path.endsWith('.ts')) continue
    hash.update(`\0${path}\0`).update(readFileSync(join(folder, path)))
  }
  return hash.digest('hex').slice(0, 24)
}

/** Written beside and put in place whole: two that start at once do not see each other's half. */
async function compile(folder) {
  const { build } = await import('esbuild')
  mkdirSync(KEPT, { recursive: true })
  const beside = mkdtempSync(`${folder}-`)
  try {
    await build({
      entryPoints: Object.fromEntries(Object.entries(ENTRIES).map(([name, path]) => [name, join(PROJECT, path)])),
      outdir: beside,
      outExtension: { '.js': '.mjs' },
      bundle: true,
      splitting: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
      target: 'node20',
      charset: 'utf8',
      logLevel: 'silent',
      plugins: [ownPlaces]
    })
    renameSync(beside, folder)
  } catch (error) {
    rmSync(beside, { recursive: true, force: true })
    if (!existsSync(folder)) throw error
  }
  forgetOld(folder)
}

/** A source that looks for a file beside itself finds it beside the source, not beside what was made of it. */
const ownPlaces = {
  name: 'own-places',
  setup(build) {
    build.onLoad({ filter: /\.(ts|mjs)$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
      loader: path.endsWith('.ts') ? 'ts' : 'js'
    }))
  }
}

/** Those of a day ago and older: a younger one may still be in use. */
function forgetOld(current) {
  for (const name of readdirSync(KEPT)) {
    const path = join(KEPT, name)
    const isOld = Date.now() - statSync(path).mtimeMs > DAY_MS
    if (path !== current && isOld) rmSync(path, { recursive: true, force: true })
  }
}
