import { PuppeteerError } from 'puppeteer'
import type { Browser, Page } from 'puppeteer'

/**
 * The browser, not the document, is why something was not printed: it ended, it gave no answer in time, or its helper that lays a
 * page out broke down. A fresh browser may do better.
 */
export class BrowserLost extends Error {
  readonly how: 'ended' | 'silent' | 'broke'
  /** How long an answer was awaited. */
  readonly seconds: number

  constructor(how: BrowserLost['how'], seconds = 0) {
    super(`The browser ${how === 'silent' ? `gave no answer within ${seconds} s` : how}.`)
    this.name = 'BrowserLost'
    this.how = how
    this.seconds = seconds
  }
}

const PLAIN_SECONDS = 30

/**
 * Seconds that a step of printing may take in a document of so many pages: 30 s and 1 s more for each page. UNDERLID_PRINT_SECONDS
 * says what stands for the 30, and stretches the rest along.
 */
export function secondsFor(pages: number, wished = process.env['UNDERLID_PRINT_SECONDS']): number {
  const base = Number(wished) > 0 ? Number(wished) : PLAIN_SECONDS
  return Math.ceil(base * (1 + pages / PLAIN_SECONDS))
}

/** Watches over the browser while a document is printed. */
export interface Watch {
  /** Never kept; broken with a BrowserLost. */
  readonly lost: Promise<never>
  /** The browser gave an answer: the next one may take as long again. */
  readonly alive: (pages: number) => void
  readonly over: (page: Page) => void
  readonly end: () => void
}

export function watchOver(browser: Browser): Watch {
  let timer: NodeJS.Timeout | undefined
  let refuse: (reason: BrowserLost) => void = () => undefined
  const lost = new Promise<never>((_, no) => (refuse = no))
  lost.catch(() => undefined)
  const gone = (): void => refuse(new BrowserLost('ended'))
  const alive = (pages: number): void => {
    clearTimeout(timer)
    const seconds = secondsFor(pages)
    // Where we ourselves were busy, the answer may be waiting; a moment more lets it in.
    const silent = (): void => void (timer = setTimeout(() => refuse(new BrowserLost('silent', seconds)), 500))
    timer = setTimeout(silent, seconds * 1000)
  }
  // What is asked for once cannot be taken back, and would keep each print for as long as the browser lasts.
  browser.on('disconnected', gone)
  alive(0)
  return {
    lost,
    alive,
    over: page => void page.once('error', () => refuse(new BrowserLost('broke'))),
    end: () => {
      clearTimeout(timer)
      browser.off('disconnected', gone)
    }
  }
}

/** What went wrong while a browser was at work: its own end shows in many forms. */
export function lostOr(error: unknown, browser: Browser): unknown {
  if (error instanceof BrowserLost) return error
  if (!browser.connected) return new BrowserLost('ended')
  return error instanceof PuppeteerError ? new BrowserLost('broke') : error
}
