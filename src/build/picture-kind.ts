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
  const head = headAt(path, HEAD_BYTES)
  return !head || pictureKind(head) !== undefined
}

/** As far as readers look for the mark of a PDF. ISO 32000-1:2008, annex H, note 13. */
const PDF_HEAD_BYTES = 1024

/** False for a file that is there and is no PDF. */
export function isPdfAt(path: string): boolean {
  return headAt(path, PDF_HEAD_BYTES)?.includes('%PDF-') ?? true
}

function headAt(path: string, count: number): Buffer | undefined {
  const bytes = Buffer.alloc(count)
  try {
    const file = openSync(path, 'r')
    try {
      return bytes.subarray(0, readSync(file, bytes, 0, count, 0))
    } finally {
      closeSync(file)
    }
  } catch {
    return undefined
  }
}
