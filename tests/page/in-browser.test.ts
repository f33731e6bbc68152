import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Page } from 'puppeteer'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { BOX_METRIC, BOX_US, GONE, TAG_ENTRY } from '../look/box-pages.ts'
import { FLEET, SITE } from '../look/sheets.ts'
import { renderPage } from '../look/render-all.ts'
import { aBrowser } from '../render/pdf-fixture.ts'

const FILES = {
  metric: renderPage('pages/box-page.njk', BOX_METRIC),
  us: renderPage('pages/box-page.njk', BOX_US),
  gone: renderPage('pages/gone.njk', GONE),
  entry: renderPage('pages/tag-entry.njk', TAG_ENTRY),
  site: renderPage('pages/site.njk', SITE),
  fleet: renderPage('pages/fleet.njk', FLEET)
}
type Name = keyof typeof FILES

let opened: OpenBrowser
let folder = ''
let page: Page

beforeAll(async () => {
  opened = await aBrowser()
  folder = mkdtempSync(join(tmpdir(), 'underlid-page-'))
  for (const [name, html] of Object.entries(FILES)) writeFileSync(join(folder, `${name}.html`), html)
  mkdirSync(join(folder, 'B', '7KQ3F9X'), { recursive: true })
  writeFileSync(join(folder, 'B', '7KQ3F9X', 'index.html'), '<title>found</title>')
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(folder, { recursive: true })
})
beforeEach(async () => {
  page = await opened.browser.newPage()
})
afterEach(() => page.close())

interface Look {
  readonly width?: number
  readonly script?: boolean
  /** Taken for today by the page. */
  readonly day?: string
  /** Run before the page's own script. */
  readonly before?: string
}

async function open(name: Name, { width = 360, script = true, day, before = '' }: Look = {}): Promise<void> {
  await page.setViewport({ width, height: 640 })
  await page.setJavaScriptEnabled(script)
  const [year, month, date] = (day ?? '2026-05-02').split('-').map(Number)
  const clock = `{ const Real = Date; Date = class extends Real { constructor(...a) { a.length ? super(...a) : super(${year}, ${(month ?? 1) - 1}, ${date}, 9) } } }`
  await page.evaluateOnNewDocument(`${clock};${before}`)
  await page.goto(pathToFileURL(join(folder, `${name}.html`)).href)
}

const textOf = (selector: string): Promise<string> =>
  page.$eval(selector, element => element.textContent.replace(/\s+/gu, ' ').trim())
const seen = (selector: string): Promise<boolean> =>
  page.$eval(selector, element => (element as { checkVisibility(): boolean } & typeof element).checkVisibility())

describe.each(Object.keys(FILES) as Name[])('the page %s', name => {
  it('fits 320 px without scrolling sideways, with script and without', async () => {
    for (const script of [true, false]) {
      await open(name, { width: 320, script })
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(320)
    }
  })
})

describe('the box page in the hand', () => {
  it('shows the tag, the box, the hazard, the ties and how to stop the water before anybody scrolls', async () => {
    await open('metric')
    for (const selector of [
      '.hazard-line',
      '.plate',
      '.top-box',
      '.ties li:last-child',
      '#stop-water .steps li:first-child'
    ])
      expect(
        await page.$eval(selector, element => element.getBoundingClientRect().bottom),
        selector
      ).toBeLessThanOrEqual(640)
  })

  it('has targets of 44 px and more', async () => {
    for (const name of ['metric', 'entry', 'gone'] as const) {
      await open(name)
      const small = await page.$$eval('a, button, input, select, textarea, summary', elements =>
        elements
          .filter(element => (element as { checkVisibility(): boolean } & typeof element).checkVisibility())
          .map(element => (element.closest('label.tick') ?? element).getBoundingClientRect())
          .filter(box => box.height < 44 || box.width < 44)
      )
      expect(small).toEqual([])
    }
  })

  it('reads well with no script at all: the day it was made, a list of what to note, no dead buttons', async () => {
    await open('metric', { script: false })
    expect(await textOf('.today-lines')).toBe('No watering on this day.')
    expect(await textOf('.battery-state')).toBe('OVERDUE')
    expect(await seen('.without-script')).toBe(true)
    expect(await page.$$eval('button', buttons => buttons.length)).toBe(0)
    expect(await seen('[data-slip]')).toBe(false)
    expect(await seen('[data-visit] label')).toBe(true)
  })
})

describe('the day the page is read', () => {
  it('takes the place of the day it was made', async () => {
    await open('metric', { day: '2026-07-01' })
    expect(await textOf('.as-of')).toBe('Today, Wed 2026-07-01')
    expect(await textOf('.today-lines li')).toBe('A · 1 Z1 · groundcover, drip: 23:10–23:35')
    expect(await textOf('.months .now th')).toBe('July now')
    expect(await page.$$eval('.months .now', rows => rows.length)).toBe(1)
  })

  it('gives the battery its state of that day, by word and by shape', async () => {
    await open('metric', { day: '2026-05-02' })
    expect(await textOf('.battery-state')).toBe('OVERDUE 18 days over')
    const shape = () => page.$eval('.battery-state path', path => path.getAttribute('d'))
    const overdue = await shape()
    await open('metric', { day: '2026-02-20' })
    expect(await textOf('.battery-state')).toBe('DUE SOON due in 53 days')
    expect(await shape()).not.toBe(overdue)
    expect(await page.$eval('.battery-state .state-word', word => word.className)).toBe('state-word state-soon')
  })

  it('leaves a battery without a date as it is', async () => {
    await open('us')
    expect(await textOf('.battery-state')).toBe('NO DATE')
  })
})

describe('the visit slip', () => {
  const slip = async (): Promise<Record<string, unknown>> => {
    const text = await page.$eval('[data-slip] pre', pre => pre.textContent)
    return parse(text.replace(/^---$/gmu, '')) as Record<string, unknown>
  }

  /** The browser hands what a page stored to the next one in its own time, so a reload at once may still miss it. */
  const reloaded = async (): Promise<Record<string, unknown>> => {
    await page.reload()
    return slip()
  }

  it('is written as the fields are filled in, dated by the phone', async () => {
    await open('metric')
    await page.type('[name=by]', 'M. Example')
    await page.click('[data-visit-battery="K1"] .tick')
    await page.type('[data-visit-battery="K1"] [name=load]', '8.9')
    await page.type('[data-visit-station="K1/3"] [name=loop]', '33')
    await page.type('[name=found]', 'Z3 opens slowly')
    expect(await slip()).toEqual({
      on: '2026-05-02',
      by: 'M. Example',
      batteries: [{ controller: 'K1', fitted: '2026-05-02', kind: '9 V alkaline', count: 1, 'under-load': '8.9 V' }],
      readings: [{ station: 'K1/3', loop: '33 ohm' }],
      found: ['Z3 opens slowly']
    })
  })

  it('asks for both halves of a coil of three leads, for the set that was fitted, and what of before is done', async () => {
    await open('metric')
    await page.$eval('.slip-buttons button:last-child', button => button.click())
    await page.type('[data-visit-station="K1/3"] [name=closing-loop]', '14.1')
    await page.type('[name=temperature]', '18')
    await page.click('[data-visit-battery="K1"] .tick')
    await page.$eval(
      '[data-visit-battery="K1"] [name=kind]',
      field => ((field as { value: string } & typeof field).value = '')
    )
    await page.type('[data-visit-battery="K1"] [name=kind]', '4 x AA lithium')
    await page.click('.tick:has([name=repaired])')
    expect(await page.$$eval('[data-visit-station="K1/1"] [name^=closing]', all => all.length)).toBe(0)
    expect(await slip()).toEqual({
      on: '2026-05-02',
      batteries: [{ controller: 'K1', fitted: '2026-05-02', kind: 'AA lithium', count: 4 }],
      readings: [{ station: 'K1/3', 'closing-loop': '14.1 ohm', temperature: '18 °C' }],
      repaired: ['Z3 opens slowly']
    })
  })

  it('survives a reload, until it is cleared', async () => {
    await open('metric')
    await page.type('[name=done]', 'cleaned VB1')
    await expect.poll(reloaded, { timeout: 20_000 }).toMatchObject({ done: ['cleaned VB1'] })
    await page.$eval('.slip-buttons button:last-child', button => button.click())
    await expect.poll(reloaded, { timeout: 20_000 }).toEqual({ on: '2026-05-02' })
  })

  it('works where storage is refused', async () => {
    await open('metric', {
      before: "Object.defineProperty(window, 'localStorage', { get() { throw new Error('no') } })"
    })
    await page.type('[name=done]', 'cleaned VB1')
    expect((await slip())['done']).toEqual(['cleaned VB1'])
    expect(await textOf('.as-of')).toBe('Today, Sat 2026-05-02')
  })

  const clipboard = (value: string) => `Object.defineProperty(navigator, 'clipboard', { value: ${value} })`
  const copy = async (): Promise<string> => {
    await page.$eval('.slip-buttons .main', button => (button as { click(): void } & typeof button).click())
    await page.waitForFunction("document.querySelector('.slip-buttons .main').textContent !== 'Copy the slip'")
    return textOf('.slip-buttons .main')
  }

  it('is copied', async () => {
    await open('metric', {
      before: clipboard('{ writeText: text => { window.copied = text; return Promise.resolve() } }')
    })
    expect(await copy()).toBe('Copied')
    expect(await page.evaluate('window.copied')).toBe(await page.$eval('[data-slip] pre', pre => pre.textContent))
  })

  it.each(['undefined', '{ writeText: () => Promise.reject(new Error()) }'])(
    'is selected for the person where the page may not copy: %s',
    async value => {
      await open('metric', { before: clipboard(value) })
      expect(await copy()).toBe('Selected. Copy it now.')
      expect(await page.evaluate('String(getSelection())')).toContain('on: 2026-05-02')
    }
  )

  it('goes into a mail', async () => {
    await open('metric')
    await page.$eval('.slip-buttons button:last-child', button => button.click())
    await page.type('[name=found]', 'a & b')
    await page.$eval('.slip-buttons a', link => {
      link.addEventListener('click', event => event.preventDefault())
      link.click()
    })
    const href = await page.$eval('.slip-buttons a', link => link.href)
    expect(href).toMatch(/^mailto:\?subject=Visit%20Kestrel/u)
    expect(decodeURIComponent(href)).toContain('- "a & b"')
  })

  it('a page whose data is broken is still a page', async () => {
    const broken = FILES.metric.replace(/(id="box-data">)[^<]*/u, '$1{')
    writeFileSync(join(folder, 'gone.html'), broken)
    await open('gone')
    expect(await textOf('.today-lines')).toBe('No watering on this day.')
    expect(await seen('.without-script')).toBe(true)
    writeFileSync(join(folder, 'gone.html'), FILES.gone)
  })
})

describe('a tag typed by hand', () => {
  it('opens its page, small letters and spaces or not', async () => {
    await open('entry')
    await page.type('[name=tag]', '7kq3 f9x')
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
    expect(page.url()).toMatch(/\/B\/7KQ3F9X\/index\.html$/u)
  })

  it('that no box has is said so, until it is typed again', async () => {
    await open('entry')
    await page.type('[name=tag]', 'AAAAAAA')
    await page.keyboard.press('Enter')
    expect(await seen('.entry-unknown')).toBe(true)
    await page.type('[name=tag]', 'B')
    expect(await seen('.entry-unknown')).toBe(false)
  })

  it('without script the list of tags is there', async () => {
    await open('entry', { script: false })
    expect(await seen('.tags a')).toBe(true)
    expect(await seen('[data-entry]')).toBe(false)
  })
})
