import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { gzipSync } from 'node:zlib'
import { PNG } from 'pngjs'
import type { Browser, Page } from 'puppeteer'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { yearRuns } from '../../src/domain/schedule/expand-year.ts'
import { nextRuns } from '../../src/domain/schedule/next-runs.ts'
import { scheduledController } from '../../src/plan/schedules.ts'
import { showClock } from '../../src/units/clock.ts'
import { date, epochDay, yearOf } from '../../src/units/date.ts'
import { accessFaults, faintTexts, smallTargets } from '../support/page-measures.ts'
import { aPhoneBrowser } from '../support/phone-browser.ts'
import { byZxing } from '../support/read-codes.ts'
import { hostFolder } from './serve-folder.ts'
import { barePage, firstViews, THIN_LINES } from './thin-line.ts'
import type { Host } from './serve-folder.ts'
import { ON, PROJECT, underlid, workFolder } from './support.ts'

/* The public folder as a technician meets it: on a phone, over a thin line, with none, and from a memory stick. */

const ids = readdirSync(join(PROJECT, 'sites'), { withFileTypes: true })
  .filter(one => one.isDirectory() && one.name !== '_shared')
  .map(one => one.name)
const folder = workFolder(ids)
const publicFolder = join(folder, 'dist/public')
const VB1 = '7KQ3F9X'

let browser: Browser
let host: Host
let page: Page

beforeAll(async () => {
  expect(underlid(['build', '--on', ON], folder).code).toBe(0)
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

const tags = (): string[] => readdirSync(join(publicFolder, 'B'))
const publicPages = (): string[] =>
  (readdirSync(publicFolder, { recursive: true }) as string[]).filter(path => path.endsWith('.html'))
const pageOf = (tag: string, from = host.address): string => `${from}/B/${tag}/`
const fileOf = (...path: string[]): string => pathToFileURL(join(publicFolder, ...path)).href
/** Tags of boxes of a site that have a page of their own, by the register. */
const tagsOf = (id: string): string[] =>
  readFileSync(join(folder, 'sites/tags.csv'), 'utf8')
    .split('\n')
    .filter(line => line.split(',')[1] === id)
    .map(line => line.slice(0, 7))
    .filter(tag => !gone().includes(tag))
const gone = (): string[] =>
  tags().filter(tag => /class="?gone/u.test(readFileSync(join(publicFolder, 'B', tag, 'index.html'), 'utf8')))
const shown = (selector: string): Promise<boolean> =>
  page.$eval(selector, element => (element as { checkVisibility(): boolean } & typeof element).checkVisibility())
const textOf = (selector: string): Promise<string> =>
  page.$eval(selector, element => element.textContent.replace(/\s+/gu, ' ').trim())

describe('the weight of a box page', () => {
  it('is at most 60 KB as served and 20 KB compressed, for every box of the demo sites', () => {
    const heavy = publicPages().flatMap(path => {
      const html = readFileSync(join(publicFolder, path))
      const packed = gzipSync(html, { level: 9 }).length
      return html.length > 60_000 || packed > 20_000 ? [`${path}: ${html.length} bytes, ${packed} packed`] : []
    })
    expect(tags().length).toBeGreaterThan(40)
    expect(heavy).toEqual([])
  })

  it('is read over a thin line as soon as a bare page of as many bytes: 50 kB/s, 400 ms each way', async () => {
    const folderOfBare = join(publicFolder, 'bare')
    mkdirSync(folderOfBare)
    const bytes = readFileSync(join(publicFolder, 'B', VB1, 'index.html')).length
    writeFileSync(join(folderOfBare, 'index.html'), barePage(bytes))
    const bare = await firstViews(browser, `${host.address}/bare/`, THIN_LINES[0])
    const box = await firstViews(browser, pageOf(VB1), THIN_LINES[0])
    rmSync(folderOfBare, { recursive: true })
    // The first sight waits for the styles of the top; the picture comes after the page.
    expect(box.seen / bare.seen).toBeLessThan(1.8)
    expect(box.whole / bare.whole).toBeLessThan(1.2)
  })
})

describe('one document with everything inside', () => {
  it('asks for nothing but itself, its photograph and its worker, and breaks no rule of its own policy', async () => {
    const said: string[] = []
    page.on('console', message => said.push(`${message.text()} ${message.location().url ?? ''}`))
    page.on('pageerror', error => said.push(String(error)))
    const requests: string[] = []
    page.on('request', request => request.url().startsWith('http') && requests.push(new URL(request.url()).pathname))
    const before = host.asked.length
    await page.goto(pageOf(VB1), { waitUntil: 'networkidle0' })
    expect([...requests].sort()).toEqual([`/B/${VB1}/`, `/B/${VB1}/photos/vb1-open.jpg`])
    expect(said).toEqual([])
    await page.click('[data-visit-battery=K1] .tick')
    await page.type('[name=by]', 'M. Example')
    await page.$$eval('summary', all => all.forEach(one => (one as { click(): void } & typeof one).click()))
    await new Promise(resolve => setTimeout(resolve, 300))
    expect(requests.length).toBe(2)
    // What the browser and the worker ask for on their own: no icon, nothing of another site.
    const own = /^\/(?:worker\.js|slip-code\.js|B\/[0-9A-Z]{7}\/(?:photos\/.*)?)$/u
    expect(host.asked.slice(before).filter(path => !own.test(path))).toEqual([])
  })

  it('sets no cookie, asks not to be indexed, and carries a strict policy: every public page of every site', async () => {
    const kinds = ['/', `/B/${VB1}/`, '/B/6W6TBW4/es.html', `/B/${gone()[0] ?? ''}/`]
    for (const path of kinds) {
      await page.goto(host.address + path)
      expect(await page.evaluate('document.cookie')).toBe('')
      expect(await page.browserContext().cookies()).toEqual([])
    }
    const pages = publicPages()
    expect(pages.length).toBeGreaterThan(tags().length)
    for (const path of pages) {
      const html = readFileSync(join(publicFolder, path), 'utf8')
      expect(html, path).toMatch(/<meta name="?robots"? content="?noindex/u)
      const policy = /Content-Security-Policy"? content="([^"]*)"/u.exec(html)?.[1]?.split(';') ?? []
      expect(policy, path).toEqual(
        expect.arrayContaining(["default-src 'none'", "base-uri 'none'", "form-action 'none'"])
      )
      expect(policy.join(';'), path).not.toMatch(/unsafe|https?:|\*/u)
      expect(html, path).not.toMatch(/document\.cookie|(?:src|href)="?https?:/u)
    }
    for (const script of ['worker.js', 'slip-code.js'])
      expect(readFileSync(join(publicFolder, script), 'utf8')).not.toMatch(/cookie/u)
  })

  it('runs no script but its own: what would be written into it stays dead', async () => {
    await page.goto(pageOf(VB1))
    const ran = await page.evaluate(async () => {
      const view = globalThis as unknown as {
        document: { body: { append(one: unknown): void }; createElement(name: string): { textContent: string } }
        ran?: boolean
      }
      const script = view.document.createElement('script')
      script.textContent = 'window.ran = true'
      view.document.body.append(script)
      await new Promise(resolve => setTimeout(resolve, 50))
      return view.ran === true
    })
    expect(ran).toBe(false)
  })
})

describe('without a signal', () => {
  /** Waits until the worker holds so many pages. */
  const kept = (count: number): Promise<unknown> =>
    page.waitForFunction(
      `caches.open('underlid-1').then(store => store.keys()).then(keys => keys.filter(one => /B\\/.*\\/$/.test(one.url)).length >= ${count} && keys.some(one => one.url.endsWith('?version')))`,
      { timeout: 15_000, polling: 100 }
    )

  it.each(ids)('every page of %s opens after one visit to any of them, and says that it is a stored copy', async id => {
    const own = tagsOf(id)
    await page.goto(pageOf(own[0] ?? ''))
    expect(await shown('.stored-note')).toBe(false)
    await kept(own.length)
    await host.stop()
    try {
      for (const tag of [...own.slice(1), own[0] ?? '']) {
        await page.goto(pageOf(tag))
        expect(await textOf('.plate-tag')).toBe(tag)
        expect(await shown('.stored-note')).toBe(true)
        expect(await textOf('.stored-note')).toBe(`Stored copy: no answer from the network. Data of ${ON}`)
        if (await page.$('.as-of')) expect(await textOf('.as-of')).toMatch(/^Today/u)
        // A picture that was never fetched leaves no hole.
        if (tag !== own[0]) await page.waitForFunction("!document.querySelector('.thumb')", { polling: 20 })
      }
      const [last = ''] = own.slice(-1)
      await page.goto(pageOf(last).slice(0, -1))
      expect(page.url()).toBe(pageOf(last))
      await page.goto(`${pageOf(last)}index.html`)
      expect(await textOf('.plate-tag')).toBe(last)
    } finally {
      await host.start()
    }
  })

  it('never shows an old page where the network has a new one', async () => {
    await page.goto(pageOf(VB1))
    await kept(3)
    const file = join(publicFolder, 'B', VB1, 'index.html')
    const before = readFileSync(file, 'utf8')
    try {
      writeFileSync(file, before.replaceAll(`Data of ${ON}`, 'Data of 2026-06-01'))
      await page.reload()
      expect(await textOf('#trust')).toContain('Data of 2026-06-01')
      expect(await shown('.stored-note')).toBe(false)
      await host.stop()
      await page.reload()
      expect(await textOf('.stored-note')).toContain('Data of 2026-06-01')
    } finally {
      writeFileSync(file, before)
      await host.start()
    }
  })

  it('a slip is shown as a code, and a reader has from it what the page says', async () => {
    await page.goto(pageOf(VB1))
    await kept(3)
    await page.waitForFunction("caches.match(location.origin + '/slip-code.js').then(Boolean)", { polling: 100 })
    await host.stop()
    try {
      await page.reload()
      await page.type('[name=by]', 'M. Example')
      await page.type('[name=found]', 'Z3 opens slowly')
      expect(await codeOnScreen()).toBe(await page.$eval('[data-slip] pre', pre => pre.textContent))
    } finally {
      await host.start()
    }
  })
})

async function codeOnScreen(): Promise<string | undefined> {
  await page.$$eval('.slip-buttons button', buttons =>
    buttons.find(one => one.textContent === 'Show it as a code')?.click()
  )
  await page.waitForSelector('.slip-code svg')
  const picture = PNG.sync.read(Buffer.from((await (await page.$('.slip-code svg'))?.screenshot()) ?? []))
  const [text] = await byZxing({
    data: new Uint8ClampedArray(picture.data),
    width: picture.width,
    height: picture.height
  })
  return text
}

describe('from a memory stick', () => {
  it('the list of tags leads to every page, and a replaced tag to the next, with script and without', async () => {
    for (const script of [true, false]) {
      await page.setJavaScriptEnabled(script)
      await page.goto(fileOf('index.html'))
      const links = await page.$$eval('.tags a', all => all.map(one => one.href))
      expect(links.length).toBe(tags().length)
      for (const link of [links[0], links.at(-1)]) {
        await page.goto(fileOf('index.html'))
        await Promise.all([
          page.waitForNavigation(),
          page.click(`.tags a[href="${new URL(link ?? '').pathname.split('/').slice(-3).join('/')}"]`)
        ])
        expect(await page.$('h1')).not.toBeNull()
      }
    }
  })

  it('every page opens, is read at 320 px without scrolling sideways, and knows today', async () => {
    await page.setViewport({ width: 320, height: 640, hasTouch: true, isMobile: true })
    // WCAG 2.2, success criterion 1.4.10 Reflow: 320 CSS pixels wide without scrolling sideways.
    for (const path of publicPages()) {
      await page.goto(fileOf(...path.split('/')))
      expect([path, await page.evaluate('document.documentElement.scrollWidth')]).toEqual([path, 320])
      expect(await page.$('h1')).not.toBeNull()
      if (await page.$('.as-of')) expect(await textOf('.as-of')).toMatch(/^(?:Today|Hoy)/u)
    }
  })

  it('a page is whole: today, the form, the slip and its code', async () => {
    await page.goto(fileOf('B', VB1, 'index.html'))
    expect(await textOf('.as-of')).toMatch(/^Today/u)
    await page.type('[name=by]', 'M. Example')
    expect(await codeOnScreen()).toContain('by: "M. Example"')
  })
})

describe('the visit slip', () => {
  it('goes round: what was filled in on the phone is read back by record, and stands in the visit', async () => {
    await page.goto(pageOf(VB1))
    const set = (selector: string, value: string) =>
      page.$eval(
        selector,
        (field, text) => {
          Object.assign(field, { value: text })
          field.dispatchEvent(new Event('input', { bubbles: true }))
        },
        value
      )
    await set('[name=on]', '2026-05-04')
    await set('[name=arrived]', '09:40')
    await set('[name=left]', '10:25')
    await page.type('[name=by]', 'M. Example, "Fenwick & Daughter"')
    await page.type('[name=reason]', 'route')
    await page.type('[data-visit-supply=S1] [name=meter]', '1291')
    await page.click('[data-visit-battery=K1] .tick')
    await page.type('[data-visit-battery=K1] [name=rest]', '9,4')
    await page.type('[data-visit-program=K1] [name=clock]', '4 min fast')
    await page.type('[data-visit-program=K1] [name=as-left]', 'A at 80 %')
    await page.select('[data-visit-station="K1/1"] [name=answers]', 'as told')
    await page.type('[data-visit-station="K1/1"] [name=flow]', '51')
    await page.type('[data-visit-station="K1/1"] [name=pressure]', '3.9')
    await page.type('[data-visit-station="K1/1"] [name=loop]', '4.4')
    await page.type('[name=temperature]', '12,5')
    await page.click('.tick:has([name=repaired])')
    await page.type('[name=found]', '# 3: Z3 opens slowly')
    await page.type('[name=done]', 'cleaned VB1')
    await page.type('[name=parts]', '2 gel-filled connector')
    await page.type('[name=open]', 'Z3 coil to be swapped')
    await page.type('[name=owner]', 'Fenwick & Daughter')
    await page.click('.tick:has([name=drawing])')
    writeFileSync(
      join(folder, 'slip.txt'),
      `Hello,\n\n${await page.$eval('[data-slip] pre', pre => pre.textContent)}\nSent from a phone`
    )
    const { code, out, err } = underlid(['record', 'kestrel-cross', '--slip', 'slip.txt', '--on', '2026-05-05'], folder)
    expect(err + out).toContain('Recorded')
    expect(code).toBe(0)
    const visits = join(folder, 'sites/kestrel-cross/visits')
    const [name = ''] = readdirSync(visits).filter(one => one.startsWith('2026-05-04'))
    const text = readFileSync(join(visits, name), 'utf8')
    for (const part of [
      'arrived: ',
      '09:40',
      '10:25',
      '9.4 V',
      '4 min fast',
      'A at 80 %',
      'as told',
      '51 L/min',
      '3.9 bar',
      '4.4 ohm',
      'temperature: 12.5 °C',
      'repaired:\n  - coil of Z3 to be read and swapped if it says AC',
      '1291 m³',
      'gel-filled connector',
      'Z3 coil to be swapped',
      'Fenwick & Daughter',
      'drawing-change: yes'
    ])
      expect(text).toContain(part)
    expect(underlid(['check', 'kestrel-cross', '--on', '2026-05-05', '--format', 'json'], folder).out).not.toContain(
      '"file/'
    )
  })
})

describe('the visit slip of coils with three leads', () => {
  it('goes round with both halves', async () => {
    await page.goto(pageOf('YVW2ETV'))
    const of = (name: string): string => `[data-visit-station="M1/6"] [name=${name}]`
    for (const [name, ohm] of [
      ['loop', '15.1'],
      ['closing-loop', '17.5'],
      ['coil', '10.2'],
      ['closing-coil', '12.6']
    ] as const)
      await page.type(of(name), ohm)
    writeFileSync(join(folder, 'halves.txt'), await page.$eval('[data-slip] pre', pre => pre.textContent))
    const { code, out } = underlid(['record', 'marram-steps', '--slip', 'halves.txt', '--dry-run'], folder)
    expect(code).toBe(0)
    expect(out.replace(/\s+/gu, ' ')).toMatch(
      /station: M1\/6.*loop: 15.1 ohm.*coil: 10.2 ohm.*closing-loop: 17.5 ohm.*closing-coil: 12.6 ohm/u
    )
  })
})

describe('today on the page and in the core', () => {
  const days = [
    '2026-01-01',
    '2026-02-28',
    '2026-03-01',
    '2026-03-08',
    '2026-03-29',
    '2026-04-01',
    '2026-04-15',
    '2026-05-01',
    '2026-05-31',
    '2026-06-15',
    '2026-07-04',
    '2026-07-31',
    '2026-08-01',
    '2026-08-31',
    '2026-09-30',
    '2026-10-15',
    '2026-10-16',
    '2026-10-25',
    '2026-11-01',
    '2026-12-31',
    '2028-02-29',
    '2028-03-01'
  ].map(date)

  it.each(['kestrel-cross', 'larkmoor-median', 'osmund-vale-nursery', 'brindle-common'])(
    'say the same openings of %s on 22 days, leap day and clock changes among them',
    async id => {
      const site = assessFleet(join(PROJECT, 'sites'), date(ON), [id]).sites[0]?.site
      const box = site?.boxes.find(
        one => one.tag && site.controllers.some(each => each.box === one.id && each.programs.length > 0)
      )
      if (!site || !box?.tag) throw new Error(`${id} has no box with a program`)
      await page.evaluateOnNewDocument(
        `{ const Real = Date, [y, m, d] = location.search.slice(1).split('-').map(Number); Date = class extends Real { constructor(...a) { a.length ? super(...a) : super(y, m - 1, d, 0) } } }`
      )
      for (const day of days) {
        await page.goto(`${fileOf('B', box.tag, 'index.html')}?${day}`)
        for (const controller of site.controllers.filter(one => one.box === box.id)) {
          const lines = await page.$$eval(`[data-today="${controller.id}"] .today-lines li`, all =>
            all.map(one => one.textContent)
          )
          const scheduled = scheduledController(site, controller)
          const calendar = [yearOf(day) - 1, yearOf(day)].flatMap(one => yearRuns(scheduled, one, site.season))
          const runs = nextRuns(calendar, epochDay(day), 1)
          const starts = runs.map(run => showClock((run.startS / 60) % 1440, site.units)).sort()
          const told = lines
            .flatMap(line => [...line.matchAll(/(\d{1,2}:\d{2}(?:\s[ap]m)?)–/gu)].map(([, time]) => time ?? ''))
            .sort()
          expect(told, `${controller.id} on ${day}`).toEqual(starts)
        }
      }
    },
    60_000
  )
})

describe('in the sun, under a glove and by a screen reader', () => {
  /** As much as a page can show at once: all folds open, the form filled, the slip as a code, the banner of a stored copy. */
  async function everything(): Promise<void> {
    await page.$$eval('details', all => all.forEach(one => one.setAttribute('open', '')))
    await page.$eval('html', html => html.setAttribute('data-stored', ''))
    if (!(await page.$('[data-visit]'))) return
    await page.$$eval('[data-visit] [type=checkbox]', all =>
      all.forEach(one => (one as { click(): void } & typeof one).click())
    )
    for (const field of ['by', 'found', 'owner']) await page.type(`[name=${field}]`, 'M. Example')
    await codeOnScreen()
  }

  it.each([
    'a box',
    'a box in US units',
    'a box that only holds a controller',
    'the list of tags',
    'a tag that is gone'
  ])('%s: no violation, targets of 44 px, and text of 7 : 1 as drawn; with script and without', async kind => {
    const path =
      {
        'a box': ['B', VB1, 'index.html'],
        'a box in US units': ['B', 'YVJNFBH', 'index.html'],
        'a box that only holds a controller': ['B', '84DVHFR', 'index.html'],
        'the list of tags': ['index.html'],
        'a tag that is gone': ['B', gone()[0] ?? '', 'index.html']
      }[kind] ?? []
    for (const script of [true, false]) {
      await page.setViewport({ width: script ? 320 : 360, height: 640, hasTouch: true, isMobile: true })
      await page.setJavaScriptEnabled(script)
      await page.goto(fileOf(...path))
      if (script) await everything()
      if (script && kind === 'the list of tags') {
        await page.type('[name=tag]', 'AAAAAAA')
        await page.keyboard.press('Enter')
        expect(await shown('.entry-unknown')).toBe(true)
      }
      await page.setJavaScriptEnabled(true)
      expect(await accessFaults(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      if (!script || kind.startsWith('a box ')) continue
      const { faint, seen } = await faintTexts(page)
      expect(faint).toEqual([])
      expect(seen).toBeGreaterThan(10)
    }
  })

  it('is drawn in its own colors on a phone that turns pages dark', async () => {
    const session = await page.createCDPSession()
    await session.send('Emulation.setAutoDarkModeOverride', { enabled: true })
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'dark' }])
    await page.goto(fileOf('B', VB1, 'index.html'))
    const corner = await page.screenshot({ clip: { x: 2, y: 300, width: 1, height: 1 } })
    expect([...PNG.sync.read(Buffer.from(corner)).data.subarray(0, 3)]).toEqual([0xfa, 0xf6, 0xec])
  })
})
