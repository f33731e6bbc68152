import { fileURLToPath } from 'node:url'
import nunjucks from 'nunjucks'
import { wordsOf } from '../words/languages.ts'
import { EN_US } from '../words/words.ts'
import type { Words } from '../words/words.ts'
import { underPolicy } from './page-policy.ts'
import { publicPage } from './public-page.ts'
import { quickTemplates } from './quick-templates.ts'
import { templateFilters, templateGlobals } from './template-helpers.ts'

export const TEMPLATES = fileURLToPath(new URL('../../templates/', import.meta.url))

/** The templates outside Eleventy: everything is escaped, and a value that is not there throws. */
export function templateEnvironment(words: Words = EN_US): nunjucks.Environment {
  quickTemplates()
  const loader = new nunjucks.FileSystemLoader(TEMPLATES, { noCache: false, watch: false })
  const environment = new nunjucks.Environment(loader, { autoescape: true, throwOnUndefined: true, trimBlocks: true })
  for (const [name, filter] of Object.entries(templateFilters)) environment.addFilter(name, filter)
  for (const [name, value] of Object.entries(templateGlobals(words))) environment.addGlobal(name, value)
  return environment
}

/** Pages that anybody can open; each gets only the styles it uses. All pages stand under a policy. */
const PUBLIC = ['box-page', 'gone', 'tag-entry']

/** Renders a page as it is written: `template` is a file name in templates/pages without its ending. */
export type PageRenderer = (template: string, view: object) => string

/** Compiled templates of one stamp. */
let compiled: { readonly stamp: string; readonly environments: Map<Words, nunjucks.Environment> } | undefined

function environmentsFor(stamp: string | undefined): Map<Words, nunjucks.Environment> {
  if (stamp === undefined) return new Map<Words, nunjucks.Environment>()
  if (compiled?.stamp !== stamp) compiled = { stamp, environments: new Map<Words, nunjucks.Environment>() }
  return compiled.environments
}

/** Each page in the language that its view names, by one environment a language. `own` stands for all of them in tests. */
export function pageRenderer(own?: nunjucks.Environment, stamp?: string): PageRenderer {
  const environments = environmentsFor(stamp)
  const environmentOf = (words: Words): nunjucks.Environment => {
    const known = environments.get(words) ?? templateEnvironment(words)
    environments.set(words, known)
    return known
  }
  const plainPage = (template: string, view: object): string => {
    const environment = own ?? environmentOf(wordsOf(languageOf(view)))
    return environment.render(`pages/${template}.njk`, { view })
  }
  return (template, view) => {
    const html = plainPage(template, view)
    return PUBLIC.includes(template) ? publicPage(html) : underPolicy(html)
  }
}

function languageOf(view: object): string | undefined {
  return 'language' in view ? String(view.language) : undefined
}
