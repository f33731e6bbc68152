import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync
} from 'node:fs'
import { dirname, join, relative } from 'node:path'

/** What stands at a path: bytes, a link to somewhere, a folder with nothing in it, or a file that may not be read. */
export type Entry =
  | { readonly kind: 'file'; readonly bytes: Buffer }
  | { readonly kind: 'link'; readonly to: string }
  | { readonly kind: 'folder' }
  | { readonly kind: 'locked'; readonly bytes: Buffer }

/** A folder of sites as plain data, by path below it. */
export type Image = ReadonlyMap<string, Entry>

export const fileOf = (text: string | Buffer): Entry => ({
  kind: 'file',
  bytes: typeof text === 'string' ? Buffer.from(text, 'utf8') : text
})

export function readImage(folder: string, below = ''): Map<string, Entry> {
  const entries = readdirSync(join(folder, below), { withFileTypes: true })
  return new Map(
    entries.flatMap(entry => {
      const path = below === '' ? entry.name : `${below}/${entry.name}`
      if (entry.isDirectory()) return [...readImage(folder, path)]
      return [[path, fileOf(readFileSync(join(folder, path)))] as const]
    })
  )
}

/** A folder on disk that is brought from one image to the next: only what differs is written. */
export class DiskFolder {
  readonly folder: string
  private held = new Map<string, Entry>()

  constructor(folder: string) {
    this.folder = folder
    rmSync(folder, { recursive: true, force: true })
    mkdirSync(folder, { recursive: true })
  }

  become(image: Image): void {
    for (const [path, entry] of this.held) {
      if (image.get(path) === entry) continue
      rmSync(join(this.folder, path), { recursive: true, force: true })
      this.held.delete(path)
      this.sweep(dirname(path))
    }
    for (const [path, entry] of image) {
      if (this.held.get(path) === entry) continue
      if (this.put(path, entry)) this.held.set(path, entry)
    }
  }

  /** Folders that nothing is left in. */
  private sweep(below: string): void {
    const folder = join(this.folder, below)
    if (below === '.' || !existsSync(folder) || readdirSync(folder).length > 0) return
    rmSync(folder, { recursive: true })
    this.sweep(dirname(below))
  }

  /** False where something else stands in the way: two entries of an image may want one place. */
  private put(path: string, entry: Entry): boolean {
    const place = join(this.folder, path)
    for (let above = dirname(place); above.length > this.folder.length; above = dirname(above))
      if (existsSync(above) && !lstatSync(above).isDirectory()) return false
    mkdirSync(dirname(place), { recursive: true })
    if (existsSync(place)) return false
    if (entry.kind === 'folder') mkdirSync(place, { recursive: true })
    else if (entry.kind === 'link') symlinkSync(entry.to, place)
    else writeFileSync(place, entry.bytes)
    if (entry.kind === 'locked') chmodSync(place, 0)
    return true
  }
}

/** Every path below, links and folders too: what was there before is there after, and nothing else. */
export function pathsBelow(folder: string): string[] {
  // With their types, since by names alone links are followed, and two rings of them branch without end.
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .map(entry => relative(folder, join(entry.parentPath, entry.name)))
    .sort()
}
