import { closeSync, openSync, readSync } from 'node:fs'

/** Kinds of pictures that browsers show and that can be stripped of what a camera wrote. */
export type PictureKind = 'jpeg' | 'png' | 'webp'

const HEAD_BYTES = 12

/** By its first bytes, whatever it is named: a name says nothing of what a phone wrote. Undefined for any other kind. */
export function pictureKind(bytes: Uint8Array): PictureKind | undefined {
  const head = Buffer.from(bytes.subarray(0, HEAD_BYTES)).toString('latin1')
  if (head.startsWith('\u00ff\u00d8\u00ff')) return 'jpeg'
  if (head.startsWith('\u0089PNG\r\n\u001a\n')) return 'png'
  return /^RIFF.{4}WEBP/su.test(head) ? 'webp' : undefined
}

/** False for a file that is there and is no picture; what cannot be read is told of elsewhere. */
export function isPictureAt(path: string): boolean {
  const bytes = new Uint8Array(HEAD_BYTES)
  try {
    const file = openSync(path, 'r')
    try {
      readSync(file, bytes, 0, HEAD_BYTES, 0)
    } finally {
      closeSync(file)
    }
  } catch {
    return true
  }
  return pictureKind(bytes) !== undefined
}
