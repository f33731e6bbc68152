import { realpathSync, statSync } from 'node:fs'
import { join, sep } from 'node:path'

/** What an address stands for: a file, another address, nothing. */
export type Found =
  | { readonly kind: 'file'; readonly file: string }
  | { readonly kind: 'moved'; readonly to: string }
  | { readonly kind: 'nothing' }

/**
 * The file below `root` behind an address, "/public/B/7KQ3F9X/". A folder stands for its index.html. Nothing above the root, behind a
 * link that leaves it, or with a name that starts with a dot, is ever found.
 */
export function findFile(root: string, address: string): Found {
  const path = decoded(address)
  if (path === undefined || !path.startsWith('/')) return { kind: 'nothing' }
  const parts = path.split('/').filter(part => part !== '')
  if (parts.some(part => part.startsWith('.') || /[\\:\0]/u.test(part))) return { kind: 'nothing' }
  const place = inside(root, join(root, ...parts))
  if (!place) return { kind: 'nothing' }
  if (statSync(place).isFile()) return path.endsWith('/') ? { kind: 'nothing' } : { kind: 'file', file: place }
  if (!path.endsWith('/')) return { kind: 'moved', to: `/${parts.map(encodeURIComponent).join('/')}/` }
  const index = inside(root, join(place, 'index.html'))
  return index && statSync(index).isFile() ? { kind: 'file', file: index } : { kind: 'nothing' }
}

/** The path in the output behind an address, a folder standing for its index.html; undefined for what is never shown. */
export function pathOf(address: string): string | undefined {
  const path = decoded(address)
  if (path === undefined || !path.startsWith('/')) return undefined
  const parts = path.split('/').filter(part => part !== '')
  if (parts.some(part => part.startsWith('.'))) return undefined
  return [...parts, ...(path.endsWith('/') ? ['index.html'] : [])].join('/')
}

/** The query and the fragment play no part. */
function decoded(address: string): string | undefined {
  try {
    return decodeURIComponent(address.replace(/[?#].*$/su, ''))
  } catch {
    return undefined
  }
}

/** Where it really stands; undefined where it does not exist or stands outside of the root. */
function inside(root: string, path: string): string | undefined {
  try {
    const [place, home] = [realpathSync(path), realpathSync(root)]
    return place === home || place.startsWith(home + sep) ? place : undefined
  } catch {
    return undefined
  }
}
