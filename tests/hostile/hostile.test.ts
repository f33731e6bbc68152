import { readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import ICAL from 'ical.js'
import Papa from 'papaparse'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readFleet } from '../../src/build/read-fleet.ts'
import { hostFolder } from '../e2e/serve-folder.ts'
import type { Host } from '../e2e/serve-folder.ts'
import { ON, underlid, workFolder } from '../e2e/support.ts'
import { aPhoneBrowser } from '../support/phone-browser.ts'
import { hostileSite } from './hostile-site.ts'

const SITE = 'kestrel-cross'
const folder = workFolder([SITE])
const dist = join(folder, 'dist')
const file = join(folder, 'sites', SITE, 'site.md')
const [sources] = readFleet(join(folder, 'sites')).sites
const { shared } = readFleet(join(folder, 'sites'))
const hostile = hostileSite({
  id: SITE,
  files: [...(sources?.site ? [sources.site] : []), ...(sources?.visits ?? [])],
  tables: sources?.tables ?? [],
  plans: sources?.plans ?? [],
  shared
})
writeFileSync(file, hostile.text)
// The largest lid label there is: words as long as these fit on no smaller one.
const ran = underlid(['print', '--binder', '--labels', '--label-size', '190x250mm', '--on', ON], folder)

const files = (ending: RegExp): string[] =>
  (readdirSync(dist, { recursive: true }) as string[]).filter(
    path => ending.test(path) && statSync(join(dist, path)).isFile()
  )
const text = (path: string): string => readFileSync(join(dist, path), 'utf8')

let host: Host
let browser: Browser
let outside: Outside
beforeAll(async () => {
  outside = await listener()
  host = await hostFolder(dist)
  browser = await aPhoneBrowser()
})
afterAll(async () => {
  await browser.close()
  await host.stop()
  outside.stop()
})

interface Outside {
  readonly address: string
  readonly heard: string[]
  readonly stop: () => void
}

/** A server that notes what is asked of it. */
async function listener(): Promise<Outside> {
  const heard: string[] = []
  const server = createServer((request, response) => {
    heard.push(request.url ?? '')
    response.end("hit('outside')")
  })
  await new Promise<void>(done => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  return { address: `http://127.0.0.1:${port}`, heard, stop: () => void server.close() }
}

/** What would run, load or restyle if nothing forbade it. `outside` is another server, which hears what is asked of it. */
const markup = (
  outside: string
): string => `<script>hit('script')</script><img src="${outside}/g" onerror="hit('image')">
<a id="x" href="javascript:hit('link')">x</a><script>document.getElementById('x').click()</script>
<script src="${outside}/h.js"></script><script src="data:text/javascript,hit('data')"></script>
<iframe srcdoc="<script>parent.hit('frame')</script>"></iframe><iframe src="${outside}/i"></iframe>
<style>body { background: url(${outside}/j) }</style><link rel="stylesheet" href="${outside}/k">
<p style="background: url(${outside}/l)">p</p><object data="${outside}/m"></object>
<svg><animate onbegin="hit('animate')" attributeName="x" dur="1s"/></svg><base href="${outside}/">
<form id="f" action="${outside}/n"></form>`

interface Seen {
  readonly hits: readonly string[]
  readonly asked: readonly string[]
  readonly bad: readonly string[]
  readonly scripts: number
  readonly shown: string
  readonly policy: string
}

/** Opens a page as a reader would, moves over it, clicks each link that leads nowhere else, and tells what happened. */
async function open(path: string, from = host.address): Promise<Seen> {
  const page = await browser.newPage()
  const asked: string[] = []
  const dialogs: string[] = []
  page.on('request', request => asked.push(request.url()))
  page.on('dialog', dialog => {
    dialogs.push(dialog.message())
    void dialog.dismiss()
  })
  await page.evaluateOnNewDocument(
    'window.hits = []; window.hit = what => { window.hits.push(what) }; window.alert = window.hit; window.print = window.hit'
  )
  await page.goto(`${from}/${path}`, { waitUntil: 'load' })
  await new Promise(resolve => setTimeout(resolve, 150))
  const seen = (await page.evaluate(`(() => {
    const all = [...document.querySelectorAll('*')]
    const attributes = all.flatMap(one => [...one.attributes].map(({ name, value }) => ({ tag: one.localName, name, value })))
    const bad = [
      ...attributes.filter(({ name }) => /^on/iu.test(name)).map(one => one.tag + ' ' + one.name),
      ...attributes.filter(({ name, value }) => /^(?:href|src|action|data|srcdoc|xlink:href)$/iu.test(name) && /^\\s*(?:javascript|vbscript|data:text)/iu.test(value)).map(one => one.tag + ' ' + one.value),
      ...all.filter(one => ['iframe', 'object', 'embed', 'base', 'animate', 'foreignobject'].includes(one.localName)).map(one => one.localName),
      ...all.filter(one => one.localName === 'meta' && /refresh/iu.test(one.httpEquiv)).map(() => 'refresh')
    ]
    for (const one of document.querySelectorAll('summary, button')) one.click()
    return {
      hits: window.hits, bad,
      scripts: [...document.scripts].filter(one => one.type !== 'application/json' && one.textContent.includes('hit(')).length,
      shown: document.documentElement.textContent,
      policy: document.querySelector('meta[http-equiv="Content-Security-Policy" i]')?.content ?? ''
    }
  })()`)) as Omit<Seen, 'asked'>
  await page.close()
  return { ...seen, hits: [...seen.hits, ...dialogs], asked }
}

describe('a site whose every free text is hostile', { timeout: 300_000 }, () => {
  it('is built and printed', () => {
    expect(hostile.carriers).toBeGreaterThan(60)
    expect(ran.err).not.toContain('Not printed')
    expect(ran.code, ran.err).toBe(0)
    expect(text(`office/${SITE}/labels.html`).match(/<article class="label"/gu)?.length).toBe(3)
  })

  it('runs nothing, asks for nothing, and shows its words as words, on every page', async () => {
    const pages = files(/\.html$/u)
    expect(pages.length).toBeGreaterThan(8)
    let shown = ''
    for (const path of pages) {
      const seen = await open(path)
      expect(seen.hits, path).toEqual([])
      expect(seen.bad, path).toEqual([])
      expect(
        seen.asked.filter(url => !url.startsWith(host.address) && !url.startsWith('data:')),
        path
      ).toEqual([])
      expect(seen.scripts, path).toBe(0)
      shown += seen.shown
    }
    for (const words of [`<script>hit('script')</script>`, `{{ 7 * 191 }}`, `<svg/onload=hit('svg')>`, `hit('prose')`])
      expect(shown).toContain(words)
    expect(shown).not.toContain('1337')
  })

  it('stands under a policy that runs only the page itself, on every page', () => {
    for (const path of files(/\.html$/u)) {
      const policy = /http-equiv=["']?Content-Security-Policy["']? content="([^"]*)"/iu.exec(text(path))?.[1] ?? ''
      expect(policy, path).toContain("default-src 'none'")
      expect(policy, path).not.toMatch(/unsafe-inline|unsafe-eval|http|\*/u)
    }
    for (const path of files(/^public\/.*\.html$/u)) expect(text(path), path).not.toMatch(/unsafe-hashes|file:/u)
  })

  it.each(['served', 'opened from the folder'])(
    'runs nothing and asks for nothing, even where markup got into a page of the office or on paper: %s',
    async how => {
      const from = how === 'served' ? host.address : pathToFileURL(dist).href
      const pages = files(/^office\/.*\.html$/u)
      expect(pages.length).toBeGreaterThan(5)
      const openHarmed = async (path: string, change = (html: string) => html): Promise<Seen> => {
        const harmed = path.replace(/\.html$/u, '-harmed.html')
        // After the head, so that the policy stands before it, as it would.
        const put = (body: string): string => body + markup(outside.address)
        writeFileSync(join(dist, harmed), change(text(path).replace(/<body[^>]*>/u, put)))
        const seen = await open(harmed, from)
        rmSync(join(dist, harmed))
        return seen
      }
      for (const path of pages) {
        const seen = await openHarmed(path)
        expect(seen.bad.length, path).toBeGreaterThan(2)
        expect([seen.hits, outside.heard], path).toEqual([[], []])
      }
      const bare = await openHarmed('office/index.html', html => html.replace(/<meta http-equiv[^>]*>/u, ''))
      expect(bare.hits).toContain('script')
      expect(outside.heard.splice(0)).toContain('/h.js')
    }
  )

  it('the list of sites is searched from the folder, under its policy', async () => {
    const page = await browser.newPage()
    const refused: string[] = []
    page.on('console', message => refused.push(message.text()))
    await page.goto(`${pathToFileURL(dist).href}/office/index.html`, { waitUntil: 'load' })
    const rows = (): Promise<unknown> =>
      page.evaluate(`[...document.querySelectorAll('[data-site]')].filter(one => !one.hidden).length`)
    expect(await rows()).toBe(1)
    await page.type('[name=words]', 'no such word anywhere')
    expect(await rows()).toBe(0)
    await page.close()
    expect(refused).toEqual([])
  })

  it('gives no cell that a spreadsheet would take for a formula', () => {
    const tables = files(/\.csv$/u)
    expect(tables.length).toBeGreaterThan(1)
    for (const path of tables) {
      const { data } = Papa.parse<string[]>(text(path).replace(/^\uFEFF/u, ''))
      const formulas = data
        .flat()
        .filter(cell => /^[\s\u00a0]*[=+\-@\t\r|%]/u.test(cell) && !/^-?\d+(?:\.\d+)?$/u.test(cell))
      expect(formulas, path).toEqual([])
    }
  })

  it('forges no event of the calendar', () => {
    const feed = new ICAL.Component(ICAL.parse(text('data/due.ics')) as never)
    const events = feed.getAllSubcomponents('vevent')
    expect(events.length).toBeGreaterThan(1)
    expect(events.filter(one => String(one.getFirstPropertyValue('summary')) === 'forged')).toEqual([])
    for (const line of text('data/due.ics').split('\r\n'))
      expect(new TextEncoder().encode(line).length).toBeLessThan(76)
  })

  it('leaves JSON whole', () => {
    for (const path of files(/\.(?:json|sarif|geojson)$/u))
      expect(() => JSON.parse(text(path)) as unknown, path).not.toThrow()
  })

  it('puts no script, no action and no address but ours into a print', async () => {
    const prints = files(/\.pdf$/u)
    expect(prints.length).toBe(2)
    for (const path of prints) {
      const bytes = readFileSync(join(dist, path))
      expect(bytes.toString('latin1')).not.toMatch(/\/JavaScript|\/JS\b|\/Launch|\/SubmitForm|\/EmbeddedFile/u)
      const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
      expect(await document.getJSActions()).toBeNull()
      for (let number = 1; number <= document.numPages; number += 1) {
        const links = (await (await document.getPage(number)).getAnnotations()) as {
          url?: string
          unsafeUrl?: string
        }[]
        const away = links
          .flatMap(one => one.unsafeUrl ?? one.url ?? [])
          .filter(url => /^(?:javascript|data|file|vbscript)/iu.test(url))
        expect(away, `${path} ${number}`).toEqual([])
      }
      await document.destroy()
    }
  })

  it('leaves nothing outside of the output folder', () => {
    // What a build keeps for the next one stands beside the output.
    expect(readdirSync(folder).filter(name => name !== '.dist.cache')).toEqual(['dist', 'sites'])
    expect(readdirSync(dist).sort()).toEqual(['.underlid', 'data', 'office', 'print', 'public'])
  })
})
