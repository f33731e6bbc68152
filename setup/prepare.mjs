import { PROJECT } from './browser.mjs'
import { nodeProblem } from './node-version.mjs'
import { ensurePackages, packagesAreThere } from './packages.mjs'
import { stop, tell } from './tell.mjs'

/** A machine with nothing but Node and npm becomes one that builds, prints and tests. Ends with 2 where that cannot be. */
export async function prepare() {
  const problem = nodeProblem(process.versions.node)
  if (problem) stop(problem)
  try {
    if (!packagesAreThere(PROJECT)) {
      tell('Packages: installing what the lock file says …')
      ensurePackages(PROJECT)
      tell('Packages: installed')
    }
  } catch (error) {
    stop(error.message)
  }
  const { ensureBrowser } = await import('./browser-install.mjs')
  return ensureBrowser()
}
