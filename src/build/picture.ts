import type { Sharp } from 'sharp'
import { Refusal } from '../base/refusal.ts'
import { pictureKind } from './picture-kind.ts'
import type { PictureKind } from './picture-kind.ts'

/** Longest side of a photograph on paper or on a page, pixels: 200 dots an inch over 8 in. */
export const LONGEST_PX = 1600
const QUALITY = 80

/**
 * A photograph ready to be shown: turned upright, no larger than it prints, and without what the camera wrote into it, its place above all.
 * One that is so already keeps its bytes.
 */
export async function readyPicture(bytes: Uint8Array, name: string): Promise<Uint8Array> {
  if (!needsWork(bytes)) return bytes
  // Slow to read in; most pictures of a build are ready.
  const { default: sharp } = await import('sharp')
  try {
    const upright = sharp(bytes)
      .autoOrient()
      .resize({ width: LONGEST_PX, height: LONGEST_PX, fit: 'inside', withoutEnlargement: true })
    // Metadata is left out unless it is asked for.
    return new Uint8Array(await saved(upright, pictureKind(bytes)).toBuffer())
  } catch {
    throw new Refusal(`${name} cannot be read as a picture.`, 'Save it anew as JPEG or PNG.')
  }
}

/** In the kind that it came in. */
function saved(picture: Sharp, kind: PictureKind | undefined): Sharp {
  if (kind === 'png') return picture.png()
  return kind === 'webp' ? picture.webp({ quality: QUALITY }) : picture.jpeg({ quality: QUALITY })
}

/** A kind whose parts are not known here is always worked on. */
function needsWork(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const kind = pictureKind(bytes)
  if (kind === 'png') return pngNeedsWork(view)
  return kind === 'jpeg' ? jpegNeedsWork(view) : true
}

/** Chunks that hold words, times or a camera's data. W3C Portable Network Graphics, 11.3. */
const PNG_ASIDE = /^(?:eXIf|tEXt|zTXt|iTXt|tIME)$/u

function pngNeedsWork(view: DataView): boolean {
  for (let at = 8; at + 12 <= view.byteLength; at += 12 + view.getUint32(at)) {
    const type = [0, 1, 2, 3].map(index => String.fromCharCode(view.getUint8(at + 4 + index))).join('')
    if (PNG_ASIDE.test(type)) return true
    if (type === 'IHDR' && Math.max(view.getUint32(at + 8), view.getUint32(at + 12)) > LONGEST_PX) return true
  }
  return false
}

/** A color profile, and Adobe's note on how colors are kept. */
const PLAIN = [0xe2, 0xee]

/** Markers before the scan: a frame gives the size; application data beyond JFIF and colors, and comments, tell more than the picture. ITU-T T.81, annex B. */
function jpegNeedsWork(view: DataView): boolean {
  for (let at = 2; at + 9 <= view.byteLength && view.getUint8(at) === 0xff; at += 2 + view.getUint16(at + 2)) {
    const marker = view.getUint8(at + 1)
    if (marker === 0xda) return false
    const isAside = (marker >= 0xe1 && marker <= 0xef && !PLAIN.includes(marker)) || marker === 0xfe
    if (isAside) return true
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
    if (isFrame && Math.max(view.getUint16(at + 5), view.getUint16(at + 7)) > LONGEST_PX) return true
  }
  return false
}
