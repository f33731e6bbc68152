import { readFile } from 'node:fs/promises'
import { join, normalize, sep } from 'node:path'
import type { HTTPRequest, Page } from 'puppeteer'
import { mediaType } from './browser-media.ts'

/** A document to print. Its own relative addresses are read from `root`; in print its links lead to `base`. */
export interface PrintSource {
  /** Folder that holds the document and all it shows. */
  readonly root: string
  /** The document's own path below the root, with forward slashes. */
  readonly path: string
  /** Left out: the file itself. */
  readonly html?: string
  /** Address that stands for the root in the links of the print, "https://example.org/". */
  readonly base: string
}

/** What a page asked for, by path below the root; both grow while it loads. */
export interface Asked {
  readonly used: Set<string>
  readonly missing: Set<string>
}

/** Lets the page see files below the root and `data:` addresses, and nothing else: no network while printing. */
export async function serveFromDisk(page: Page, source: PrintSource): Promise<Asked> {
  const asked = { used: new Set<string>(), missing: new Set<string>() }
  await page.setRequestInterception(true)
  page.on('request', request => {
    void answer(request, source, asked).catch(() => undefined)
  })
  return asked
}

/** Where the document is opened: its path below the base. */
export function addressOf(source: PrintSource): string {
  return new URL(source.path.split('/').map(encodeURIComponent).join('/'), folderAddress(source.base)).href
}

async function answer(request: HTTPRequest, source: PrintSource, asked: Asked): Promise<void> {
  const url = request.url()
  if (url.startsWith('data:')) return request.continue()
  // Full browsers ask for this one on their own.
  if (new URL(url).pathname === '/favicon.ico') return request.respond({ status: 204 })
  const path = pathBelowBase(url, source.base)
  const body = path === undefined ? undefined : await contentOf(path, source)
  if (body === undefined) {
    asked.missing.add(path ?? url)
    return request.abort('blockedbyclient')
  }
  if (path !== undefined && path !== source.path) asked.used.add(path)
  return request.respond({ status: 200, contentType: mediaType(path ?? ''), body })
}

function pathBelowBase(url: string, base: string): string | undefined {
  const [asked, folder] = [new URL(url), new URL(folderAddress(base))]
  if (asked.origin !== folder.origin || !asked.pathname.startsWith(folder.pathname)) return undefined
  return decodeURIComponent(asked.pathname.slice(folder.pathname.length))
}

async function contentOf(
  path: string,
  { root, path: own, html }: PrintSource
): Promise<string | Uint8Array | undefined> {
  if (path === own && html !== undefined) return html
  const file = normalize(join(root, path))
  if (!file.startsWith(normalize(join(root, sep)))) return undefined
  return readFile(file).catch(() => undefined)
}

function folderAddress(base: string): string {
  return base.endsWith('/') ? base : `${base}/`
}
