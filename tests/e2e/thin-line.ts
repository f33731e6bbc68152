import type { Browser } from 'puppeteer'

export interface ThinLine {
  readonly name: string
  /** Round trip, ms, and bytes a second down and up. */
  readonly latencyMs: number
  readonly down: number
  readonly up: number
}

export const THIN_LINES = [
  { name: 'slow 3G', latencyMs: 400, down: 50_000, up: 50_000 },
  { name: 'one bar', latencyMs: 1000, down: 12_500, up: 6_000 }
] as const satisfies readonly ThinLine[]

export interface FirstViews {
  /** Milliseconds from asking until something stands on the screen, and until the page is whole and its script has run. */
  readonly seen: number
  readonly whole: number
}

/** Opens an address as if for the first time, over a thin line. */
export async function firstViews(browser: Browser, address: string, line: ThinLine): Promise<FirstViews> {
  const context = await browser.createBrowserContext()
  const page = await context.newPage()
  await page.setViewport({ width: 360, height: 640, hasTouch: true, isMobile: true })
  const session = await page.createCDPSession()
  await session.send('Network.enable')
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: line.latencyMs,
    downloadThroughput: line.down,
    uploadThroughput: line.up
  })
  await page.goto(address, { waitUntil: 'domcontentloaded', timeout: 60_000 })
  await page.waitForFunction("performance.getEntriesByName('first-contentful-paint').length > 0", { timeout: 60_000 })
  const times = (await page.evaluate(
    "({ seen: performance.getEntriesByName('first-contentful-paint')[0].startTime, whole: performance.getEntriesByType('navigation')[0].domContentLoadedEventEnd })"
  )) as FirstViews
  await context.close()
  return times
}

/** A page of so many bytes with nothing but words in it: no style, no script. */
export function barePage(bytes: number): string {
  const head = '<!doctype html><html lang="en"><meta charset="utf-8"><title>bare</title><p>'
  return (head + 'water valve station '.repeat(bytes)).slice(0, bytes)
}
