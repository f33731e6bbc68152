import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { Refusal } from '../base/refusal.ts'
import { mediaType } from '../render/browser-media.ts'
import { findFile } from './serve-files.ts'
import { watchFolders } from './watch-folders.ts'

export interface ServeOptions {
  /** The output folder. */
  readonly root: string
  /** Where "/" leads: "/office/". */
  readonly home: string
  readonly watch: readonly string[]
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
const RELOADER = `<script>new EventSource('${CHANGES}').onmessage=()=>location.reload()</script>`

/** Shows an output folder to this machine only, builds anew when a watched folder changes, and has open pages load again. */
export async function serve({ root, home, watch, rebuild, port = 0 }: ServeOptions): Promise<Serving> {
  const listeners = new Set<ServerResponse>()
  const server = createServer((request, response) => {
    if (!isFromHere(request)) return tell(response, 403, 'This preview answers this machine only.')
    if (request.url === CHANGES) return listen(request, response, listeners)
    answer(root, home, request, response)
  })
  await listening(server, port)
  const watcher = watchFolders(watch, async () => {
    if (await rebuild()) for (const listener of listeners) listener.write('data: changed\n\n')
  })
  const { port: taken } = server.address() as AddressInfo
  const close = async (): Promise<void> => {
    watcher.close()
    for (const listener of listeners) listener.end()
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

function listen(request: IncomingMessage, response: ServerResponse, listeners: Set<ServerResponse>): void {
  response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
  response.write('retry: 500\n\n')
  listeners.add(response)
  request.on('close', () => listeners.delete(response))
}

function answer(root: string, home: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') return tell(response, 405, 'Only for reading.')
  if (request.url === '/') return redirect(response, home)
  const found = findFile(root, request.url ?? '')
  if (found.kind === 'moved') return redirect(response, found.to)
  if (found.kind === 'nothing') return tell(response, 404, 'Nothing stands at this address.')
  const body = content(found.file)
  if (body === undefined) return tell(response, 404, 'Nothing stands at this address.')
  response.writeHead(200, {
    'content-type': mediaType(found.file),
    'content-length': body.byteLength,
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff'
  })
  response.end(request.method === 'HEAD' ? undefined : body)
}

/** Undefined where a build has just taken the file away. */
function content(file: string): Buffer | undefined {
  try {
    const bytes = readFileSync(file)
    return file.endsWith('.html') ? Buffer.concat([bytes, Buffer.from(RELOADER)]) : bytes
  } catch {
    return undefined
  }
}

function redirect(response: ServerResponse, to: string): void {
  response.writeHead(302, { location: to, 'cache-control': 'no-store' })
  response.end()
}

function tell(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' })
  response.end(`${words}\n`)
}
