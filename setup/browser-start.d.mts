import type { Browser, LaunchOptions } from 'puppeteer'
import type { BrowserFailure, BrowserPlace } from './browser.mjs'

export interface Started {
  readonly browser?: Browser
  readonly place?: BrowserPlace
  readonly failures: readonly BrowserFailure[]
}

export function startFirst(
  launch: (options: LaunchOptions) => Promise<Browser>,
  places: readonly BrowserPlace[],
  seconds?: number
): Promise<Started>
export function endBrowser(browser: Browser): void
export function closeBrowser(browser: Browser, seconds?: number): Promise<void>
export function reasonOf(error: unknown): string
