import { readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
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
  shared
})
writeFileSync(file, hostile.text)
const ran = underlid(['print', '--on', ON], folder)

const files = (ending: RegExp): string[] =>
  (readdirSync(dist, { recursive: true }) as string[]).filter(
    path => ending.test(path) && statSync(join(dist, path)).isFile()
  )
const text = (path: string): string => readFileSync(join(dist, path), 'utf8')

let host: Host
let browser: Browser
beforeAll(async () => {
  host = await hostFolder(dist)
  browser = await aPhoneBrowser()
})
afterAll(async () => {
  await browser.close()
  await host.stop()
})

interface Seen {
  readonly hits: readonly string[]
  readonly asked: readonly string[]
  readonly bad: readonly string[]
  readonly scripts: number
  readonly shown: string
  readonly policy: string
}

/** Opens a page as a reader would, moves over it, clicks each link that leads nowhere else, and tells what happened. */
async function open(path: string): Promise<Seen> {
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
  await page.goto(`${host.address}/${path}`, { waitUntil: 'load' })
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

describe('a site whose every free text is hostile', () => {
  it('is built and printed', () => {
    expect(hostile.carriers).toBeGreaterThan(60)
    expect(ran.err).not.toContain('Not printed')
    expect(ran.code, ran.err).toBe(0)
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

  it('stands under a policy that runs only the page itself, on every public page', () => {
    for (const path of files(/^public\/.*\.html$/u)) {
      const policy = /http-equiv=["']?Content-Security-Policy["']? content="([^"]*)"/iu.exec(text(path))?.[1] ?? ''
      expect(policy, path).toContain("default-src 'none'")
      expect(policy, path).not.toMatch(/unsafe-inline|unsafe-eval|http|\*/u)
    }
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
