import { join, relative, resolve, sep } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Page } from 'puppeteer'

/** A document to print. It and all it shows are read from `root`; in print its links lead to `base`. */
export interface PrintSource {
  /** Folder that holds the document and all it shows. */
  readonly root: string
  /** The document's own path below the root, with forward slashes. */
  readonly path: string
  /** Address that stands for the root in the links of the print, "https://example.org/". */
  readonly base: string
}

/** What a page asked for, by path below the root, or by address where it is not there; both grow while it loads. */
export interface Asked {
  readonly used: Set<string>
  readonly missing: Set<string>
}

/**
 * Opens the document from the disk and notes what it shows. Handing each file through here instead, so as to see it first, costs a
 * third of the time of the print; so what lies outside the root is told afterwards, and the print is not handed on. It waits as long
 * as it is let.
 */
export async function openFromDisk(page: Page, source: PrintSource): Promise<Asked> {
  const asked = { used: new Set<string>(), missing: new Set<string>() }
  await Promise.all([page.setJavaScriptEnabled(false), page.setOfflineMode(true)])
  page.on('request', request => note(request.url(), source, asked))
  page.on('requestfailed', request => asked.missing.add(pathBelow(request.url(), source.root) ?? request.url()))
  await page.goto(pathToFileURL(join(resolve(source.root), source.path)).href, { waitUntil: 'load', timeout: 0 })
  return asked
}

/** Type that the document has come to need is read in. */
export async function typeReady(page: Page): Promise<void> {
  await page.evaluate('document.fonts.ready.then(() => undefined)')
}

/**
 * Prints: tagged, with bookmarks, on sheets of this size (points) where the document does not say its own. Without a limit of its own;
 * in one piece, since the many small ones of the page's own way take longer.
 */
export async function printPage(page: Page, [width, height]: readonly [number, number]): Promise<Uint8Array> {
  const session = await page.createCDPSession()
  const { data } = await session.send('Page.printToPDF', {
    paperWidth: width / POINTS_PER_INCH,
    paperHeight: height / POINTS_PER_INCH,
    ...{ marginTop: 0, marginBottom: 0, marginLeft: 0, marginRight: 0 },
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
    transferMode: 'ReturnAsBase64'
  })
  return Buffer.from(data, 'base64')
}

const POINTS_PER_INCH = 72

/** The folder's address in the links of the print as the browser writes it, and what stands for it. */
export function linksOf({ root, base }: PrintSource): { readonly from: string; readonly to: string } {
  const folder = new URL(base).href
  return { from: `${pathToFileURL(resolve(root)).href}/`, to: folder.endsWith('/') ? folder : `${folder}/` }
}

function note(url: string, { root, path }: PrintSource, asked: Asked): void {
  if (url.startsWith('data:')) return
  const below = pathBelow(url, root)
  if (below === undefined) asked.missing.add(url)
  else if (below !== path) asked.used.add(below)
}

/** With forward slashes; undefined for what is no file of the folder. */
function pathBelow(url: string, root: string): string | undefined {
  // An encoded slash is no path that anybody wrote for a file of the folder.
  if (!url.startsWith('file:') || /%2f|%5c/iu.test(url)) return undefined
  const path = relative(resolve(root), fileURLToPath(url))
  return path === '' || path.startsWith('..') ? undefined : path.split(sep).join('/')
}
