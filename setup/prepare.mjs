import { PROJECT } from './browser.mjs'
import { nodeProblem } from './node-version.mjs'
import { ensurePackages } from './packages.mjs'
import { stop, tell } from './tell.mjs'

/** A machine with nothing but Node and npm becomes one that builds, prints and tests. Ends with 2 where that cannot be. */
export async function prepare() {
  const problem = nodeProblem(process.versions.node)
  if (problem) stop(problem)
  try {
    if (ensurePackages(PROJECT) === 'installed') tell('Packages: installed as the lock file says.')
  } catch (error) {
    stop(error.message)
  }
  const { ensureBrowser } = await import('./browser-install.mjs')
  return ensureBrowser()
}
