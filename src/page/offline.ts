/// <reference lib="dom" />
import type { PageData } from './data.ts'
import { all } from './dom.ts'
import type { KeepWish } from './worker.ts'

/** Address of the public folder that the page stands in, also on a memory stick; undefined where a page was saved alone. */
export function publicFolder(tag: string): string | undefined {
  const { origin, protocol, pathname } = location
  const at = pathname.lastIndexOf(`/B/${tag}`)
  return at < 0 ? undefined : `${protocol === 'file:' ? 'file://' : origin}${pathname.slice(0, at + 1)}`
}

/** Has the worker keep every page of this site, so that the next box opens without a signal. Where there are no workers nothing is lost. */
export function keepOffline({ tag, offline }: PageData): void {
  const folder = publicFolder(tag)
  if (!offline || folder === undefined || location.protocol === 'file:' || !('serviceWorker' in navigator)) return
  const others = all('.languages a').map(link => link.getAttribute('href') ?? '')
  const files = [
    ...offline.tags.flatMap(one => ['', ...others].map(file => `${folder}B/${one}/${file}`)),
    `${folder}slip-code.js`
  ]
  const wish: KeepWish = { version: offline.version, files }
  const { serviceWorker: workers } = navigator
  workers
    .register(`${folder}worker.js`, { scope: `${folder}B/` })
    .then(() => workers.ready)
    .then(({ active }) => active?.postMessage(wish))
    .catch(() => undefined)
}
