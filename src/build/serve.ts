import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { Refusal } from '../base/refusal.ts'
import { mediaType } from '../render/browser-media.ts'
import { oneAtATime } from './one-at-a-time.ts'
import type { OutputFile } from './output-stage.ts'
import { pagesAhead } from './pages-ahead.ts'
import type { PagesAhead } from './pages-ahead.ts'
import { allowing, hashSource } from '../render/page-policy.ts'
import { findFile, pathOf } from './serve-files.ts'
import { watchFolders } from './watch-folders.ts'

export interface ServeOptions {
  /** The output folder. */
  readonly root: string
  /** Where "/" leads: "/office/". */
  readonly home: string
  readonly watch: readonly string[]
  /** Pages that can be shown before all is built anew, by their path in the output: those of the one site that was edited. */
  readonly ahead?: (changed: readonly string[]) => Promise<readonly OutputFile[]>
  /** Makes the output anew; true where the pages shown should be loaded again. It tells of its own troubles. */
  readonly rebuild: () => Promise<boolean>
  /** 0 or left out: any that is free. */
  readonly port?: number
}

export interface Serving {
  /** "http://127.0.0.1:4600/". */
  readonly url: string
  readonly close: () => Promise<void>
}

const CHANGES = '/.underlid/changes'

/** Put at the end of each page that is previewed; never in a page that is written. */
const RELOAD = `new EventSource('${CHANGES}?'+encodeURIComponent(location.pathname)).onmessage=()=>location.reload()`

/** An open page, and the address it shows. */
interface Listener {
  readonly response: ServerResponse
  readonly address: string
}

/** What is shown, and how each page looked when it was last asked for. */
interface Shown {
  readonly root: string
  readonly ahead: PagesAhead
  readonly looks: Map<string, string>
}

/**
 * Shows an output folder to this machine only, builds anew when a watched folder changes, and has open pages load again whose bytes are others
 * now. What is made ahead of the build stands in its place until the build has written it.
 */
export async function serve({ root, home, watch, ahead, rebuild, port = 0 }: ServeOptions): Promise<Serving> {
  const listeners = new Set<Listener>()
  const shown: Shown = { root, ahead: pagesAhead(), looks: new Map() }
  const server = createServer((request, response) => {
    if (!isFromHere(request)) return tell(response, 403, 'This preview answers this machine only.')
    if (request.url?.split('?')[0] === CHANGES) return listen(request, response, listeners)
    answer(shown, home, request, response)
  })
  await listening(server, port)
  const reload = (): void => {
    for (const listener of listeners) if (isOther(shown, listener.address)) listener.response.write('data: changed\n\n')
  }
  const build = oneAtATime(async () => {
    const round = shown.ahead.round()
    if (!(await rebuild())) return
    shown.ahead.forget(round)
    reload()
  })
  const watcher = watchFolders(watch, async changed => {
    const pages = ahead ? await ahead(changed) : []
    if (pages.length > 0) {
      shown.ahead.put(pages)
      reload()
    }
    build()
  })
  const { port: taken } = server.address() as AddressInfo
  const close = async (): Promise<void> => {
    watcher.close()
    for (const { response } of listeners) response.end()
    server.closeAllConnections()
    await new Promise<void>(resolve => server.close(() => resolve()))
  }
  return { url: `http://127.0.0.1:${taken}/`, close }
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const taken = error.code === 'EADDRINUSE' || error.code === 'EACCES'
      reject(taken ? new Refusal(`Port ${port} is not free. Name another with --port.`) : error)
    })
    server.listen(port, '127.0.0.1', resolve)
  })
}

/** A page elsewhere must not read this preview through a name that it points here. */
function isFromHere(request: IncomingMessage): boolean {
  return /^(?:127\.0\.0\.1|localhost)(?::\d+)?$/u.test(request.headers.host ?? '')
}

function listen(request: IncomingMessage, response: ServerResponse, listeners: Set<Listener>): void {
  response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
  response.write('retry: 500\n\n')
  const listener = { response, address: addressIn(request.url ?? '') }
  listeners.add(listener)
  request.on('close', () => listeners.delete(listener))
}

/** The page that listens, where it says which it is. */
function addressIn(url: string): string {
  try {
    return decodeURIComponent(url.split('?')[1] ?? '')
  } catch {
    return ''
  }
}

/** True as well of a page that does not say what it shows. */
function isOther(shown: Shown, address: string): boolean {
  if (address === '') return true
  const body = bodyOf(shown, address)
  return shown.looks.get(address) !== (body && lookOf(body.bytes))
}

const lookOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

function answer(shown: Shown, home: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') return tell(response, 405, 'Only for reading.')
  if (request.url === '/') return redirect(response, home)
  const address = request.url ?? ''
  const body = bodyOf(shown, address)
  if (!body) {
    const found = findFile(shown.root, address)
    return found.kind === 'moved'
      ? redirect(response, found.to)
      : tell(response, 404, 'Nothing stands at this address.')
  }
  shown.looks.set(address.replace(/[?#].*$/su, ''), lookOf(body.bytes))
  response.writeHead(200, {
    'content-type': mediaType(body.path),
    'content-length': body.bytes.byteLength,
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff'
  })
  response.end(request.method === 'HEAD' ? undefined : body.bytes)
}

/** What stands at an address: made ahead, or in the output. */
function bodyOf(
  { root, ahead }: Shown,
  address: string
): { readonly path: string; readonly bytes: Uint8Array } | undefined {
  const path = pathOf(address)
  const made = path === undefined ? undefined : ahead.find(path)
  if (path !== undefined && made) return { path, bytes: withReloader(path, made) }
  const found = findFile(root, address)
  const bytes = found.kind === 'file' ? content(found.file) : undefined
  return found.kind === 'file' && bytes ? { path: found.file, bytes: withReloader(found.file, bytes) } : undefined
}

/** Undefined where a build has just taken the file away. */
function content(file: string): Buffer | undefined {
  try {
    return readFileSync(file)
  } catch {
    return undefined
  }
}

/** The page's own policy lets the reloader in for as long as it is previewed. */
function withReloader(path: string, bytes: Uint8Array): Uint8Array {
  if (!path.endsWith('.html')) return bytes
  const html = allowing(Buffer.from(bytes).toString('utf8'), hashSource(RELOAD))
  return Buffer.from(`${html}<script>${RELOAD}</script>`)
}

function redirect(response: ServerResponse, to: string): void {
  response.writeHead(302, { location: to, 'cache-control': 'no-store' })
  response.end()
}

function tell(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' })
  response.end(`${words}\n`)
}
