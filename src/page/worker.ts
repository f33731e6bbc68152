/// <reference lib="dom" />

/*
 * The worker of the public folder. It keeps the box pages of the sites that this phone has visited, and answers from them where the network
 * does not; such an answer is marked, so that the page says that it is a stored copy. It knows nothing by itself: a page tells it what to keep.
 */

const STORE = 'underlid-1'
/** A bar of signal that gives nothing in so long is no signal for somebody who kneels at a box. */
const PATIENCE_MS = 4000

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void
}
interface Asked extends Lasting {
  readonly request: Request
  respondWith(answer: Promise<Response>): void
}
interface Told extends Lasting {
  readonly data: KeepWish
}
interface WorkerScope {
  readonly registration: { readonly scope: string }
  readonly clients: { claim(): Promise<void> }
  skipWaiting(): Promise<void>
  addEventListener<E extends Event>(name: string, listener: (event: E) => void): void
}
declare const self: WorkerScope

/** What a page asks the worker to keep: the pages of its site, under a version made from their content. */
export interface KeepWish {
  readonly version: string
  /** Addresses, the first of them naming the set. */
  readonly files: readonly string[]
}

self.addEventListener<Lasting>('install', event => event.waitUntil(self.skipWaiting()))
self.addEventListener<Lasting>('activate', event => event.waitUntil(Promise.all([dropOld(), self.clients.claim()])))
self.addEventListener<Told>('message', event => event.waitUntil(keep(event.data)))
self.addEventListener<Asked>('fetch', event => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== new URL(self.registration.scope).origin) return
  event.respondWith(answer(event))
})

async function dropOld(): Promise<void> {
  for (const name of await caches.keys()) if (name.startsWith('underlid-') && name !== STORE) await caches.delete(name)
}

/** Fetches the set anew where its version changed. A file that cannot be had now keeps its last copy, and the next visit tries again. */
async function keep({ version, files }: KeepWish): Promise<void> {
  const store = await caches.open(STORE)
  const mark = `${files[0] ?? ''}?version`
  if ((await (await store.match(mark))?.text()) === version) return
  const had = await Promise.all(
    files.map(async file => {
      const response = await fetch(file, { cache: 'no-cache' }).catch(() => undefined)
      if (response?.ok) await store.put(nameOf(file), response)
      return response?.ok === true
    })
  )
  if (had.every(Boolean)) await store.put(mark, new Response(version))
}

async function answer(event: Asked): Promise<Response> {
  const { request } = event
  const store = await caches.open(STORE)
  const name = nameOf(request.url)
  const fresh = fetch(request).then(async response => {
    if (response.ok) await store.put(name, response.clone())
    return response
  })
  event.waitUntil(fresh.catch(() => undefined))
  const kept = await store.match(name)
  if (!kept) return fresh
  const late = new Promise<undefined>(resolve => setTimeout(resolve, PATIENCE_MS))
  const response = await Promise.race([fresh.catch(() => undefined), late])
  if (response && response.status < 500) return response
  // A page is stored under its folder; without the slash its pictures would be looked for one folder up.
  if (request.mode === 'navigate' && !/(?:\/|\.html)$/u.test(new URL(request.url).pathname))
    return Response.redirect(name)
  return /html/u.test(kept.headers.get('content-type') ?? '') ? stored(kept) : kept
}

/** The kept page, marked as such before it is shown: it says so with scripts off too. */
async function stored(response: Response): Promise<Response> {
  const html = await response.text()
  return new Response(html.replace('<html ', '<html data-stored '), { headers: response.headers })
}

/** "…/B/7KQ3F9X", "…/B/7KQ3F9X/" and "…/B/7KQ3F9X/index.html" are one page. */
function nameOf(address: string): string {
  const [plain = ''] = address.split(/[?#]/u)
  return plain.replace(/index\.html$/u, '').replace(/(\/B\/[^/.]+)$/u, '$1/')
}
