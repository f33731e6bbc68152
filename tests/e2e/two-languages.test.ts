import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'puppeteer'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { aPhoneBrowser } from '../support/phone-browser.ts'
import { accessFaults, faintTexts, smallTargets } from '../support/page-measures.ts'
import { hostFolder } from './serve-folder.ts'
import type { Host } from './serve-folder.ts'
import { LANGUAGES, wordsOf } from '../../src/words/languages.ts'
import { ON, PROJECT, underlid, workFolder } from './support.ts'

/* A site in two languages, as somebody meets it who reads the second: on a phone, with script and without, with a signal and without. */

const SITE = 'tansy-yard'
const folder = workFolder([SITE])
const publicFolder = join(folder, 'dist/public')

let browser: Browser
let host: Host
let page: Page
let tags: string[]

beforeAll(async () => {
  expect(underlid(['build', '--on', ON], folder).code).toBe(0)
  tags = readdirSync(join(publicFolder, 'B')).filter(tag =>
    readdirSync(join(publicFolder, 'B', tag)).includes('es.html')
  )
  browser = await aPhoneBrowser()
  host = await hostFolder(publicFolder)
}, 120_000)
afterAll(async () => {
  await browser.close()
  await host.stop()
})
beforeEach(async () => {
  const context = await browser.createBrowserContext()
  page = await context.newPage()
  await page.setViewport({ width: 360, height: 640, hasTouch: true, isMobile: true })
})
afterEach(() => page.browserContext().close())

const pageOf = (tag: string): string => `${host.address}/B/${tag}/`
const language = (): Promise<string> => page.$eval('html', html => html.lang)
const textOf = (selector: string): Promise<string> =>
  page.$eval(selector, element => element.textContent.replace(/\s+/gu, ' ').trim())
const isIn = (wanted: string): Promise<unknown> =>
  page.waitForFunction(`document.documentElement.lang === '${wanted}'`, { timeout: 10_000, polling: 50 })
const choose = (code: string): Promise<void> => page.click(`.languages a[hreflang="${code}"]`)

interface Said {
  readonly text: string
  /** The language that the text stands under. */
  readonly lang: string
}

/** All that a page says: its texts, its title, and what a screen reader is told of pictures and fields. */
const said = (): Promise<Said[]> =>
  page.evaluate(`(() => {
    const found = [{ text: document.title, lang: document.documentElement.lang }]
    const add = (text, at) => text.trim() && found.push({ text: text.replace(/\\s+/g, ' ').trim(), lang: at.closest('[lang]').lang })
    for (const one of document.querySelectorAll('[alt], [aria-label], [placeholder], [title]'))
      for (const name of ['alt', 'aria-label', 'placeholder', 'title']) add(one.getAttribute(name) ?? '', one)
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if (!/^(?:SCRIPT|STYLE|PRE)$/.test(node.parentElement.tagName)) add(node.data, node.parentElement)
    return found
  })()`) as Promise<Said[]>

/** What the files of the site say in their own words: names, places, sheets, visits. */
const written = (): string => {
  const at = (path: string): string => readFileSync(join(folder, 'sites', path), 'utf8')
  const below = (path: string): string[] =>
    readdirSync(join(folder, 'sites', path)).map(name => (name.endsWith('.md') ? at(join(path, name)) : ''))
  // Sources are named as they were published.
  const sources = readFileSync(join(PROJECT, 'src/reference/sources.ts'), 'utf8')
  const names = LANGUAGES.map(one => wordsOf(one).name)
  return [at(`${SITE}/site.md`), ...below(`${SITE}/visits`), ...below('_shared/sheets'), sources, ...names].join('\n')
}

describe('the pages of a site in two languages', () => {
  it('are there for every box, each under its own language and with a link to the other', async () => {
    expect(tags.length).toBe(3)
    for (const tag of tags)
      for (const [file, lang] of [
        ['', 'en-US'],
        ['es.html', 'es']
      ] as const) {
        await page.goto(pageOf(tag) + file)
        expect(await language()).toBe(lang)
        expect(await page.$$eval('.languages a', all => all.map(one => [one.lang, one.textContent]))).toEqual([
          ['en-US', 'English'],
          ['es', 'Español']
        ])
        expect(await page.$eval('.languages [aria-current]', one => (one as HTMLElement).lang)).toBe(lang)
      }
  })

  it('say nothing in English on the Spanish page but what the files of the site say so, and what is marked as English', async () => {
    const own = written()
    for (const tag of tags) {
      await page.goto(pageOf(tag))
      const english = new Set((await said()).map(one => one.text))
      await page.goto(`${pageOf(tag)}es.html`)
      const spanish = await said()
      expect(spanish.length).toBeGreaterThan(150)
      const alike = spanish.filter(one => one.lang === 'es' && /\p{L}{3}/u.test(one.text) && english.has(one.text))
      const words = alike.flatMap(one => one.text.match(/[\p{L}’']{3,}/gu) ?? [])
      expect([...new Set(words.filter(word => !new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'u').test(own)))]).toEqual([])
    }
  })

  it('have no English word that the files of the site do not hold with its neighbours', async () => {
    const ENGLISH =
      /(?:\p{L}+ )?\b(?:the|of|and|with|is|are|not|from|this|box|at|by|on|water(?:ing)?|station|battery|due|days?|start)\b(?: \p{L}+)?/giu
    const own = written()
    for (const tag of tags) {
      await page.goto(`${pageOf(tag)}es.html`)
      const found = (await said()).filter(one => one.lang === 'es').flatMap(one => one.text.match(ENGLISH) ?? [])
      const isOwn = (words: string): boolean =>
        own.includes(words) || own.includes(words.replace(/^\S+ /u, '')) || own.includes(words.replace(/ \S+$/u, ''))
      expect([...new Set(found)].filter(words => !isOwn(words))).toEqual([])
    }
  })
})

describe('the switch', () => {
  it('puts the whole page into the other language and back without a reload, and keeps what was filled in', async () => {
    const [tag = ''] = tags
    await page.goto(pageOf(tag))
    await page.type('[name=by]', 'M. Example')
    await page.evaluate('window.same = true')
    await choose('es')
    await isIn('es')
    expect(await textOf('#stop-water h2')).toBe('Cortar el agua')
    expect(await textOf('.as-of')).toMatch(/^Hoy, (?:lun|mar|mié|jue|vie|sáb|dom) \d{4}-/u)
    expect(await page.title()).toContain(tag)
    expect(await page.$eval('[name=by]', field => (field as { value: string } & typeof field).value)).toBe('M. Example')
    expect(await page.$eval('[data-slip] pre', pre => pre.textContent)).toContain('by: "M. Example"')
    expect(await textOf('.slip-buttons .main')).toBe('Copiar el parte')
    await choose('en-US')
    await isIn('en-US')
    expect(await textOf('#stop-water h2')).toBe('Stop the water')
    expect(await page.evaluate('window.same')).toBe(true)
  })

  it('is remembered at the next box of the site', async () => {
    const [first = '', second = ''] = tags
    await page.goto(pageOf(first))
    await choose('es')
    await isIn('es')
    await page.goto(pageOf(second))
    await isIn('es')
    expect(await textOf('.plate-tag')).toBe(second)
  })

  it('is a link where scripts are off', async () => {
    const [tag = ''] = tags
    await page.setJavaScriptEnabled(false)
    await page.goto(pageOf(tag))
    await Promise.all([page.waitForNavigation(), choose('es')])
    expect([await language(), await textOf('#stop-water h2')]).toEqual(['es', 'Cortar el agua'])
    await Promise.all([page.waitForNavigation(), choose('en-US')])
    expect([await language(), await textOf('#stop-water h2')]).toEqual(['en-US', 'Stop the water'])
  })

  it('is a link on a memory stick, with script and without', async () => {
    const [tag = ''] = tags
    for (const script of [true, false]) {
      await page.setJavaScriptEnabled(script)
      await page.goto(pathToFileURL(join(publicFolder, 'B', tag, 'index.html')).href)
      await Promise.all([page.waitForNavigation(), choose('es')])
      expect(await language()).toBe('es')
      if (script) expect(await textOf('.as-of')).toMatch(/^Hoy, /u)
    }
  })

  it('works without a signal at every box after one visit, and the stored copy says so in the language that is read', async () => {
    const [first = ''] = tags
    await page.goto(pageOf(first))
    await page.waitForFunction(
      `caches.open('underlid-1').then(store => store.keys()).then(keys => keys.some(one => one.url.endsWith('?version')))`,
      { timeout: 15_000, polling: 100 }
    )
    await host.stop()
    try {
      for (const tag of tags) {
        await page.goto(`${pageOf(tag)}`)
        await choose('es')
        await isIn('es')
        expect(await textOf('.stored-note')).toMatch(/^Copia guardada: la red no responde\. Datos del \d/u)
        expect(await page.$eval('.stored-note', note => note.checkVisibility())).toBe(true)
        await choose('en-US')
        await isIn('en-US')
        expect(await textOf('.stored-note')).toMatch(/^Stored copy: no answer from the network\. Data of \d/u)
      }
      await page.setJavaScriptEnabled(false)
      await page.goto(`${pageOf(first)}es.html`)
      expect([await language(), await page.$eval('.stored-note', note => note.checkVisibility())]).toEqual(['es', true])
    } finally {
      await host.start()
    }
  })
})

describe('the Spanish page in the sun, under a glove and by a screen reader', () => {
  it('has text of 7 : 1 as drawn, targets of 44 px, and no violation', async () => {
    await page.goto(`${pageOf(tags[0] ?? '')}es.html`)
    await page.$$eval('details', all => all.forEach(one => (one.open = true)))
    expect(await smallTargets(page)).toEqual([])
    expect(await accessFaults(page)).toEqual([])
    expect((await faintTexts(page)).faint).toEqual([])
  })
})
