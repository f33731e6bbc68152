import { statSync } from 'node:fs'
import puppeteer from 'puppeteer'
import type { Browser } from 'puppeteer'
import { closeBrowser, endBrowser, startFirst } from '../../setup/browser-start.mjs'
import { browsersThere, noBrowserMessage } from '../../setup/browser.mjs'

export interface OpenBrowser {
  readonly browser: Browser
  /** "HeadlessChrome/143.0.7499.0". */
  readonly version: string
  readonly path: string
}

/** No browser could be started: where it was looked and what helps, line by line. */
export interface NoBrowser {
  readonly told: readonly string[]
}

/** Starts the first browser that starts. Whoever opens it closes it; it ends with this process in any case, an interrupt included. */
export async function openBrowser(): Promise<OpenBrowser | NoBrowser> {
  const { browser, place, failures } = await startFirst(options => puppeteer.launch(options), browsersThere())
  if (!browser || !place) return { told: noBrowserMessage(failures) }
  return { browser, version: await browser.version(), path: place.path }
}

/** Lends a browser to `work` and closes it whatever happens. Answers what `work` answers, or that there is none. */
export async function withBrowser<T>(work: (opened: OpenBrowser) => Promise<T>): Promise<T | NoBrowser> {
  const opened = await openBrowser()
  if (isNoBrowser(opened)) return opened
  try {
    return await work(opened)
  } finally {
    await closeBrowser(opened.browser)
  }
}

/** A browser for as long as it lasts, and a fresh one after it is lost. */
export interface BrowserLoan {
  readonly borrow: () => Promise<OpenBrowser | NoBrowser>
  /** Ends it at once; whoever borrows next gets a fresh one. False where it was lost before. */
  readonly lose: (opened: OpenBrowser) => boolean
  readonly giveBack: () => Promise<void>
}

export function lendBrowsers(): BrowserLoan {
  let current: Promise<OpenBrowser | NoBrowser> | undefined
  const lost = new Set<OpenBrowser>()
  const borrow = (): Promise<OpenBrowser | NoBrowser> => (current ??= openBrowser())
  const lose = (opened: OpenBrowser): boolean => {
    if (lost.has(opened)) return false
    lost.add(opened)
    // Only the last one that was opened is lent.
    current = undefined
    endBrowser(opened.browser)
    return true
  }
  const giveBack = async (): Promise<void> => {
    const opened = await current
    if (opened && !isNoBrowser(opened)) await closeBrowser(opened.browser)
  }
  return { borrow, lose, giveBack }
}

export function isNoBrowser(value: unknown): value is NoBrowser {
  return typeof value === 'object' && value !== null && 'told' in value
}

/** Stands for the browser that would print, without starting it: its path, size and date. Undefined where none is there. */
export function browserMark(): string | undefined {
  const place = browsersThere()[0]
  if (!place) return undefined
  const { size, mtimeMs } = statSync(place.path)
  return `${place.path} ${size} ${Math.round(mtimeMs)}`
}
