import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import nunjucks from 'nunjucks'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { renderPages } from '../../src/render/eleventy.ts'
import type { PagePlan, RenderedPage } from '../../src/render/eleventy.ts'

let templates = ''
beforeEach(() => {
  templates = mkdtempSync(join(tmpdir(), 'underlid-templates-'))
  mkdirSync(join(templates, 'pages'))
  template('box', '<h1>{{ view.title }}</h1>{{ view.note | shout }}')
})
afterEach(() => rmSync(templates, { recursive: true }))

function template(name: string, text: string): void {
  writeFileSync(join(templates, 'pages', `${name}.njk`), text)
}

function rendering(pages: readonly PagePlan[]): Promise<RenderedPage[]> {
  const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(templates), { autoescape: true })
  environment.addFilter('shout', (text: string) => text.toUpperCase())
  return renderPages(pages, { environment, templates })
}

const page = (path: string, changes: Partial<PagePlan> = {}): PagePlan => ({
  path,
  template: 'box',
  data: { title: 'Box', note: 'a' },
  ...changes
})

describe('rendering pages', () => {
  it('gives back each planned page, in the order of the plan, at its path as written', async () => {
    const pages = ['public/B/7KQ3F9X/index.html', 'office/index.html', 'public/B/AB2/index.html'].map(path =>
      page(path)
    )
    expect((await rendering(pages)).map(({ path }) => path)).toEqual(pages.map(({ path }) => path))
  })

  it('escapes what people wrote, and leaves braces and dashes in it alone', async () => {
    const data = { title: '<b>{{ 7 * 7 }}</b> {% raw %} -- "x" & \u2019', note: '' }
    const [made] = await rendering([page('a.html', { data })])
    expect(made?.html).toContain('&lt;b&gt;{{ 7 * 7 }}&lt;/b&gt; {% raw %} -- &quot;x&quot; &amp; \u2019')
  })

  it('lets no page see another, and no key of the data clash with names that Eleventy uses', async () => {
    template(
      'keys',
      '{{ view.page }} {{ view.collections }} {{ view.permalink }} {{ view.pagination }} {{ page }}{{ collections }}'
    )
    const data = { page: 1, collections: 2, permalink: 'elsewhere.html', pagination: 4 }
    const pages = [page('a.html', { template: 'keys', data }), page('b.html', { template: 'keys', data: {} })]
    const made = await rendering(pages)
    expect(made.map(({ path, html }) => [path, html.trim()])).toEqual([
      ['a.html', '1 2 elsewhere.html 4'],
      ['b.html', '']
    ])
  })

  it('does not change the data it was handed', async () => {
    const data = Object.freeze({ title: 'Box', note: 'a', list: Object.freeze([1, 2]) })
    await rendering([page('a.html', { data })])
    expect(data).toEqual({ title: 'Box', note: 'a', list: [1, 2] })
  })

  it('renders two thousand pages, each once', async () => {
    const pages = Array.from({ length: 2000 }, (_, index) =>
      page(`B/${index}/index.html`, { data: { title: `${index}`, note: '' } })
    )
    const made = await rendering(pages)
    expect(made).toHaveLength(2000)
    expect(made[1999]).toEqual({ path: 'B/1999/index.html', html: '<h1>1999</h1>' })
  })

  it('writes nothing and says nothing', async () => {
    const before = readdirSync('.')
    const said = vi.spyOn(process.stdout, 'write').mockReturnValue(true)
    await rendering([page('office/index.html')]).finally(() => said.mockRestore())
    expect(said).not.toHaveBeenCalled()
    expect(readdirSync('.')).toEqual(before)
  })

  it('of no pages is no pages', async () => {
    expect(await rendering([])).toEqual([])
  })

  it('works from any folder', () => {
    const module = fileURLToPath(new URL('../../src/render/eleventy.ts', import.meta.url))
    const script = join(templates, 'run.mts')
    writeFileSync(
      script,
      `import nunjucks from ${JSON.stringify(fileURLToPath(import.meta.resolve('nunjucks')))}
       import { renderPages } from ${JSON.stringify(module)}
       const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(${JSON.stringify(templates)}))
       environment.addFilter('shout', text => text)
       console.log((await renderPages([{ path: 'a.html', template: 'box', data: { title: 'T', note: '' } }], { environment }))[0].html)`
    )
    const tsx = import.meta.resolve('tsx')
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', tsx, script], {
      cwd: tmpdir(),
      encoding: 'utf8'
    })
    expect(stderr).toBe('')
    expect(stdout.trim()).toBe('<h1>T</h1>')
  })
})

describe('a plan that cannot be carried out is refused before anything is rendered', () => {
  it('two pages on one path: both are named', async () => {
    const pages = [
      page('B/AB2/index.html', { from: 'sites/a/site.md, VB1' }),
      page('B/ab2/index.html', { from: 'sites/b/site.md, VB7' })
    ]
    await expect(rendering(pages)).rejects.toThrow(
      'B/ab2/index.html is planned twice: by box for sites/a/site.md, VB1, and by box for sites/b/site.md, VB7.'
    )
  })

  it.each(['', '/etc/x', '../x.html', 'a/../../x.html', 'a//b.html', 'a\\b.html', './a.html', 'C:/x'])(
    'the path "%s"',
    async path => {
      await expect(rendering([page(path)])).rejects.toThrow('no path below the output folder')
    }
  )
})

describe('a template that fails is told with its file and line', () => {
  it('at a mistake in its grammar', async () => {
    template('broken', '<p>\n\n{% if %}\n')
    await expect(rendering([page('a.html', { template: 'broken' })])).rejects.toThrow(
      /pages\/broken\.njk:3:\d+: .+while making a\.html/u
    )
  })

  it('at a call of something that is not there, once for all pages that share it', async () => {
    template('broken', '<p>{{ view.title }}</p>\n{{ view.lost.thing() }}\n')
    const pages = ['a', 'b', 'c'].map(name => page(`${name}.html`, { template: 'broken' }))
    await expect(rendering(pages)).rejects.toThrow(
      /^[^\n]*pages\/broken\.njk:2:\d+: Unable to call [^\n]*a\.html and 2 more\)$/u
    )
  })

  it('at a template that is not there', async () => {
    await expect(rendering([page('a.html', { template: 'lost' })])).rejects.toThrow(
      /pages\/lost\.njk: template not found/u
    )
  })

  it('at two broken templates, both', async () => {
    template('one', '{{ nope() }}')
    template('two', '{% for %}')
    const pages = [page('a.html', { template: 'one' }), page('b.html', { template: 'two' })]
    await expect(rendering(pages)).rejects.toThrow(/one\.njk[^]*two\.njk/u)
  })
})
