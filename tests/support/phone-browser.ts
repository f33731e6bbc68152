import puppeteer from 'puppeteer'
import type { Browser } from 'puppeteer'
import { startFirst } from '../../setup/browser-start.mjs'
import { browsersThere, noBrowserMessage } from '../../setup/browser.mjs'

/** A browser that may ask this machine, which the one that prints may not. */
export async function aPhoneBrowser(): Promise<Browser> {
  const { browser, failures } = await startFirst(
    options =>
      puppeteer.launch({ ...options, args: options.args?.filter(one => !one.startsWith('--host-resolver')) ?? [] }),
    browsersThere()
  )
  if (!browser) throw new Error(noBrowserMessage(failures).join('\n'))
  return browser
}
