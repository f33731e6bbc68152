import { createReadStream, existsSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo, Socket } from 'node:net'
import { extname, join } from 'node:path'

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.jpg': 'image/jpeg',
  '.png': 'image/png'
}

export interface Host {
  readonly address: string
  /** Paths asked for, in order. */
  readonly asked: string[]
  /** As if the signal were gone: whoever asks gets no answer. */
  readonly stop: () => Promise<void>
  readonly start: () => Promise<void>
}

/** A plain host of files, as docs/hosting.md asks for one: a folder without its slash is forwarded, and answered with its index.html. */
export async function hostFolder(folder: string): Promise<Host> {
  const asked: string[] = []
  const sockets = new Set<Socket>()
  let port = 0
  let server: Server | undefined
  const start = async (): Promise<void> => {
    server = createServer((request, response) => {
      const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname)
      asked.push(path)
      const file = join(folder, path)
      if (existsSync(file) && statSync(file).isDirectory() && !path.endsWith('/'))
        return void response.writeHead(301, { location: `${path}/` }).end()
      const found = path.endsWith('/') ? join(file, 'index.html') : file
      if (!existsSync(found)) return void response.writeHead(404, { 'content-type': 'text/plain' }).end('not here')
      response.writeHead(200, { 'content-type': TYPES[extname(found)] ?? 'application/octet-stream' })
      createReadStream(found).pipe(response)
    })
    server.on('connection', socket => {
      sockets.add(socket)
      socket.on('close', () => sockets.delete(socket))
    })
    await new Promise<void>(resolve => server?.listen(port, '127.0.0.1', resolve))
    port = (server.address() as AddressInfo).port
  }
  const stop = async (): Promise<void> => {
    for (const socket of sockets) socket.destroy()
    await new Promise(resolve => server?.close(resolve))
  }
  await start()
  return { address: `http://127.0.0.1:${port}`, asked, stop, start }
}
