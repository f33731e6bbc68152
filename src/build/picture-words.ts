import { inflateSync } from 'node:zlib'

/**
 * What may be words in a picture: all that stands beside its pixels, in one and in two bytes a letter. Pixels hold any run of bytes sooner or
 * later, a code of four figures among them, so they are not read. What is no known kind of picture is given whole.
 */
export function pictureWords(bytes: Uint8Array): string {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  return (besideThePixels(buffer) ?? [buffer]).map(inLetters).join('\n')
}

function besideThePixels(bytes: Buffer): Buffer[] | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return ofJpeg(bytes)
  if (bytes.subarray(0, 8).toString('latin1') === '\x89PNG\r\n\x1a\n') return ofPng(bytes)
  if (bytes.subarray(0, 4).toString('latin1') === 'RIFF') return ofWebp(bytes)
  return undefined
}

const SCAN = 0xda
const END = Buffer.from([0xff, 0xd9])

/** Segments before the first scan, and what stands after the end of the picture. ITU-T T.81, annex B. */
function ofJpeg(bytes: Buffer): Buffer[] {
  let at = 2
  while (at + 4 <= bytes.length && bytes[at] === 0xff && bytes[at + 1] !== SCAN) at += 2 + bytes.readUInt16BE(at + 2)
  // Within a scan no marker but those of restarts can stand.
  const end = bytes.indexOf(END, at)
  return [bytes.subarray(0, at), bytes.subarray(end < 0 ? at : end + 2)]
}

/** Chunks other than pixels and palette; packed words are unpacked. W3C Portable Network Graphics, 11.2 and 11.3. */
function ofPng(bytes: Buffer): Buffer[] {
  const found: Buffer[] = []
  let at = 8
  while (at + 12 <= bytes.length) {
    const length = bytes.readUInt32BE(at)
    const type = bytes.subarray(at + 4, at + 8).toString('latin1')
    const data = bytes.subarray(at + 8, at + 8 + length)
    if (!/^(?:IDAT|PLTE|fdAT)$/u.test(type))
      found.push(data, ...(/^(?:zTXt|iTXt|iCCP)$/u.test(type) ? unpacked(data) : []))
    at += 12 + length
  }
  return [...found, bytes.subarray(Math.min(at, bytes.length))]
}

/** The packed part begins with the mark of its method wherever the words before it end. RFC 1950, 2.2. */
function unpacked(data: Buffer): Buffer[] {
  for (let at = data.indexOf(0x78); at >= 0; at = data.indexOf(0x78, at + 1))
    try {
      return [inflateSync(data.subarray(at))]
    } catch {
      continue
    }
  return []
}

/** Chunks other than pixels. RFC 9649, 2.3. */
function ofWebp(bytes: Buffer): Buffer[] {
  const found: Buffer[] = []
  let at = 12
  while (at + 8 <= bytes.length) {
    const length = bytes.readUInt32LE(at + 4)
    const type = bytes.subarray(at, at + 4).toString('latin1')
    if (!/^(?:VP8.|ALPH|ANMF)$/u.test(type)) found.push(bytes.subarray(at + 8, at + 8 + length))
    at += 8 + length + (length % 2)
  }
  return found
}

function inLetters(bytes: Buffer): string {
  return `${bytes.toString('utf8')}\n${bytes.toString('latin1').replaceAll('\0', '')}`
}
