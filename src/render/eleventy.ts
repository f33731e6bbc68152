import { join, relative } from 'node:path'
import Eleventy from '@11ty/eleventy'
import { PROJECT } from '../../setup/browser.mjs'
import type { Environment } from 'nunjucks'
import { templateFault } from './eleventy-fault.ts'
import type { TemplateFault } from './eleventy-fault.ts'
import { planFaults } from './eleventy-plan.ts'
import type { PagePlan } from './eleventy-plan.ts'
import { pageRenderer } from './template-environment.ts'

export type { PagePlan } from './eleventy-plan.ts'

export interface RenderedPage {
  readonly path: string
  readonly html: string
}

export interface RenderOptions {
  /** Left out: the one with all helpers and words. */
  readonly environment?: Environment
  /** Folder of the templates; pages stand in its `pages/`. */
  readonly templates?: string
  /** Another one where templates may have changed; templates read under the same one are not read again. */
  readonly stamp?: string
}

const OUTPUT = 'underlid-output'

/**
 * Renders the planned pages, in the order of the plan; nothing is written. Throws, naming template and line, where a template fails,
 * and where Eleventy gives back other pages than were planned.
 */
export async function renderPages(pages: readonly PagePlan[], options: RenderOptions = {}): Promise<RenderedPage[]> {
  const faults = planFaults(pages)
  if (faults.length > 0) throw new Error(faults.join('\n'))
  if (pages.length === 0) return []
  const templates = options.templates ?? join(PROJECT, 'templates')
  const render = pageRenderer(options.environment, options.stamp)
  const broken = new Map<string, string[]>()
  const html = (page: PagePlan): string => {
    try {
      return render(page.template, page.data)
    } catch (error) {
      const fault = faultWords(templateFault(error, join(templates, 'pages', `${page.template}.njk`)))
      broken.set(fault, [...(broken.get(fault) ?? []), page.path])
      return ''
    }
  }
  const made = await throughEleventy(pages, templates, html)
  if (broken.size > 0)
    throw new Error([...broken].map(([fault, paths]) => `${fault} (${pagesWords(paths)})`).join('\n'))
  return pages.map(({ path }) => ({ path, html: made.get(path) ?? '' }))
}

/** One virtual template, paginated over the plan: Eleventy decides nothing but goes through every page. */
async function throughEleventy(
  pages: readonly PagePlan[],
  templates: string,
  html: (page: PagePlan) => string
): Promise<Map<string, string>> {
  const said: string[] = []
  await readTypeScript()
  const eleventy = new Eleventy(fromHere(templates), OUTPUT, {
    configPath: fromHere(join(PROJECT, '.eleventy.ts')),
    quietMode: true,
    config: config => {
      config.addGlobalData('plan', pages)
      config.addTemplate('pages.11ty.js', ({ planned }) => html(planned as PagePlan), {
        pagination: { data: 'plan', size: 1, alias: 'planned' },
        permalink: ({ planned }: { planned: PagePlan }) => planned.path
      })
    }
  })
  const keep = (message: string): void => void said.push(message)
  eleventy.logger.overrideLogger({ log: () => undefined, info: () => undefined, warn: keep, error: keep })
  const output = await eleventy.toJSON()
  const made = new Map(output.map(page => [page.outputPath.replace(`./${OUTPUT}/`, ''), page.content]))
  const lost = pages.filter(page => !made.has(page.path)).map(page => page.path)
  if (lost.length > 0 || output.length !== pages.length)
    throw new Error(
      [`${pages.length} pages were planned and ${output.length} rendered.`, ...lost.slice(0, 5), ...said].join('\n')
    )
  return made
}

let typeScript: Promise<unknown> | undefined

/** Eleventy imports its configuration, which is TypeScript, on its own. */
function readTypeScript(): Promise<unknown> {
  typeScript ??= import('tsx/esm/api').then(tsx => tsx.register())
  return typeScript
}

/** Eleventy takes paths from the folder it is run in. */
function fromHere(path: string): string {
  return relative(process.cwd(), path) || '.'
}

function faultWords({ template, line, column, reason }: TemplateFault): string {
  const place = line === undefined ? '' : `:${line}:${column}`
  return `${relative(PROJECT, template).replaceAll('\\', '/')}${place}: ${reason}`
}

function pagesWords([first, ...others]: readonly string[]): string {
  return `while making ${first}${others.length > 0 ? ` and ${others.length} more` : ''}`
}
