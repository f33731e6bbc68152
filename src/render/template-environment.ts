import { fileURLToPath } from 'node:url'
import nunjucks from 'nunjucks'
import { templateFilters, templateGlobals } from './template-helpers.ts'

export const TEMPLATES = fileURLToPath(new URL('../../templates/', import.meta.url))

/** The templates outside Eleventy: everything is escaped, and a value that is not there throws. */
export function templateEnvironment(): nunjucks.Environment {
  const loader = new nunjucks.FileSystemLoader(TEMPLATES, { noCache: false, watch: false })
  const environment = new nunjucks.Environment(loader, { autoescape: true, throwOnUndefined: true, trimBlocks: true })
  for (const [name, filter] of Object.entries(templateFilters)) environment.addFilter(name, filter)
  for (const [name, value] of Object.entries(templateGlobals)) environment.addGlobal(name, value)
  return environment
}
