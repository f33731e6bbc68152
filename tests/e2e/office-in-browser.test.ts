import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { PDFDocument } from 'pdf-lib'
import type { Page } from 'puppeteer'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { buildFleet } from '../../src/build/pipeline.ts'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { date } from '../../src/units/date.ts'
import { aBrowser } from '../render/pdf-fixture.ts'

const SITES = ['harbour-steps', 'kestrel-cross', 'mercer-row']
const PAGES = ['index', 'map', 'water', 'findings', 'route', 'kestrel-cross/index'] as const

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

let folder = ''
let opened: OpenBrowser
let page: Page

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlid-office-'))
  mkdirSync(join(folder, 'sites'))
  for (const name of [...SITES, '_shared'])
    cpSync(join('sites', name), join(folder, 'sites', name), { recursive: true })
  await buildFleet({ sites: join(folder, 'sites'), out: join(folder, 'dist'), on: date('2026-05-01'), mark: 'one' })
  opened = await aBrowser()
  page = await opened.browser.newPage()
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(folder, { recursive: true, force: true })
})

const addressOf = (name: string): string => pathToFileURL(join(folder, `dist/office/${name}.html`)).href

async function open(name: string, width = 1280): Promise<void> {
  await page.setViewport({ width, height: 900 })
  await page.goto(addressOf(name))
}

const shown = (): Promise<string[]> =>
  page.$$eval('tr[data-site]', rows =>
    rows
      .filter(row => (row as { checkVisibility(): boolean } & typeof row).checkVisibility())
      .map(row => row.getAttribute('data-site') ?? '')
  )
const told = (): Promise<string> => page.$eval('[data-shown]', element => element.textContent)

async function search(words: string): Promise<string[]> {
  await page.$eval('[name=words]', field => ((field as unknown as { value: string }).value = ''))
  await page.type('[name=words]', words)
  return shown()
}

describe('the list of all sites, opened from a folder', () => {
  beforeEach(() => open('index'))

  it('is found by a name, a tag, a zone, a word of a visit, the code of a finding, part of a word, two words in any order', async () => {
    for (const [words, sites] of [
      ['harbour', ['harbour-steps']],
      ['7kq3f9x', ['kestrel-cross']],
      ['MEADOW', ['kestrel-cross']],
      ['bubbler', ['harbour-steps']],
      ['wire/coil-voltage', ['kestrel-cross']],
      ['terr steps', ['harbour-steps']],
      ['steps  terr', ['harbour-steps']],
      ['steps meadow', []],
      ['   ', [...SITES]]
    ] as const)
      expect(await search(words), words).toEqual(sites)
    expect(await told()).toBe('3 of 3 sites')
  })

  it('is never found by a private word, whole or in part', async () => {
    for (const words of ['7719', 'locker', '3391']) expect(await search(words), words).toEqual([])
    expect(await told()).toBe('0 of 3 sites')
  })

  it('is narrowed by choices, which add up with the words, and whole again when they are taken back', async () => {
    await page.select('[name=place]', 'Planters')
    expect(await shown()).toEqual(['harbour-steps', 'mercer-row'])
    expect(await told()).toBe('2 of 3 sites')
    await page.select('[name=findings]', 'error')
    expect(await shown()).toEqual(['mercer-row'])
    expect(await search('harbour')).toEqual([])
    await page.select('[name=findings]', '')
    expect(await shown()).toEqual(['harbour-steps'])
    await page.select('[name=place]', '')
    expect(await search(' ')).toEqual(SITES)
    await page.select('[name=due]', 'overdue')
    expect(await shown()).toEqual(['kestrel-cross'])
  })

  it('is used by keyboard alone: to the words, to a choice, to the site', async () => {
    const focused = (): Promise<unknown> =>
      page.evaluate('document.activeElement.name || document.activeElement.getAttribute("href")')
    for (let step = 0; step < 12 && (await focused()) !== 'words'; step += 1) await page.keyboard.press('Tab')
    expect(await focused()).toBe('words')
    await page.keyboard.type('kestrel')
    await page.keyboard.press('Enter')
    expect([page.url(), await shown()]).toEqual([addressOf('index'), ['kestrel-cross']])
    await page.keyboard.press('Tab')
    expect(await focused()).toBe('place')
    await page.keyboard.press('ArrowDown')
    expect(await page.$eval('[name=place]', field => (field as unknown as { value: string }).value)).not.toBe('')
    await page.keyboard.press('ArrowUp')
    for (let step = 0; step < 6 && (await focused()) !== 'kestrel-cross/index.html'; step += 1)
      await page.keyboard.press('Tab')
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
    expect(page.url()).toBe(addressOf('kestrel-cross/index'))
  })

  it('is whole without script, and shows no form that does nothing', async () => {
    await page.setJavaScriptEnabled(false)
    await open('index')
    await page.setJavaScriptEnabled(true)
    expect(await page.$eval('[data-filters]', form => form.getBoundingClientRect().height)).toBe(0)
    expect((await page.$$('tr[data-site]')).length).toBe(SITES.length)
  })

  it('prints as it is narrowed, without the form', async () => {
    await search('kestrel')
    await page.emulateMediaType('print')
    expect(await page.$eval('[data-filters]', form => form.getBoundingClientRect().height)).toBe(0)
    expect(await shown()).toEqual(['kestrel-cross'])
    await page.emulateMediaType()
  })
})

describe.each(PAGES)('the page %s of the office', name => {
  it('has links that stand alone, and marks, 24 px high and wide or more on a desk', async () => {
    await open(name)
    const small = await page.$$eval('.links a, td > a, tbody th > a, .fleet-map a:has(circle, rect)', links =>
      links
        .filter(link => link.getClientRects().length > 0)
        .map(link => ({ text: link.textContent, box: link.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 24 || box.height < 24)
        .map(({ text, box }) => `${text.trim()}: ${box.width} × ${box.height}`)
    )
    expect(small).toEqual([])
  })

  it('fits a phone without scrolling sideways; what is wider scrolls in itself and is reached by keyboard', async () => {
    await open(name, 360)
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(360)
    const unreached = await page.$$eval('.scrolled', boxes =>
      boxes
        .filter(box => box.scrollWidth > box.clientWidth && box.getAttribute('tabindex') !== '0')
        .map(box => box.className)
    )
    expect(unreached).toEqual([])
  })

  it('breaks no rule of access that a program can look for', async () => {
    await open(name)
    await page.evaluate(AXE)
    const broken = await page.evaluate(
      "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then(result => result.violations.map(one => one.id + ': ' + one.nodes.map(node => node.html.slice(0, 120)).join(' | ')))"
    )
    expect(broken).toEqual([])
  })

  it('prints on paper: nothing runs over the edge, rows stay in one piece', async () => {
    await open(name)
    const pdf = await PDFDocument.load(await page.pdf({ format: 'A4', preferCSSPageSize: true }))
    const sheets = pdf.getPageCount()
    expect(sheets).toBeLessThan(30)
    if (name === 'map') expect(sheets).toBe(1)
    await page.emulateMediaType('print')
    await page.setViewport({ width: 622, height: 900 })
    const wide = await page.$$eval('main *', all =>
      all
        .filter(one => one.getBoundingClientRect().right > 623 && !one.closest('svg, .scrolled'))
        .map(one => one.tagName)
    )
    const whole = await page.$$eval('.ruled tbody tr', rows => rows.map(row => getComputedStyle(row).breakInside))
    await page.emulateMediaType()
    expect(wide).toEqual([])
    expect(whole.every(one => one === 'avoid')).toBe(true)
  })
})

describe('binder and labels as web pages', () => {
  it.each(['binder', 'labels'])('the %s page fits a phone; what is wider scrolls in itself', async name => {
    for (const site of SITES) {
      await open(`${site}/${name}`, 360)
      expect([site, await page.evaluate('document.documentElement.scrollWidth')]).toEqual([site, 360])
    }
  })
})

describe('every page of the office', () => {
  it('links to files that are there, and to nothing that only a print knows', () => {
    const office = join(folder, 'dist/office')
    const pages = readdirSync(office, { recursive: true, encoding: 'utf8' }).filter(path => path.endsWith('.html'))
    const lost = pages.flatMap(path =>
      [...readFileSync(join(office, path), 'utf8').matchAll(/<[a-z][^>]*\s(?:href|src)="([^"#]+)/gu)]
        .map(([, target = '']) => target)
        .filter(target => !/^(?:tel|mailto|https?|data):/u.test(target))
        .filter(target => !existsSync(join(office, dirname(path), decodeURIComponent(target))))
        .map(target => `${path}: ${target}`)
    )
    expect(pages.length).toBeGreaterThan(12)
    expect(lost).toEqual([])
  })

  it('of a site leads back to the list of all', () => {
    expect(readFileSync(join(folder, 'dist/office/kestrel-cross/index.html'), 'utf8')).toContain(
      '<a href="../index.html">Sites</a>'
    )
  })
})

describe('the map, opened from a folder', () => {
  it('leads by keyboard from each mark to its site, and asks nobody for a tile', async () => {
    const asked: string[] = []
    page.on('request', request => asked.push(request.url()))
    await open('map')
    page.removeAllListeners('request')
    expect(asked).toEqual([addressOf('map')])
    const links = await page.$$eval('.fleet-map a', all => all.map(one => one.getAttribute('href') ?? ''))
    for (const site of SITES) expect(links).toContain(`${site}/index.html`)
    for (let step = 0; step < 12; step += 1) {
      await page.keyboard.press('Tab')
      if (await page.evaluate('!!document.activeElement.closest(".fleet-map a")')) break
    }
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
    expect(page.url()).toMatch(/\/office\/[\w-]+\/index\.html$/u)
  })
})
