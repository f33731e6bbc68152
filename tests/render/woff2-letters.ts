import { readFileSync } from 'node:fs'
import { brotliDecompressSync } from 'node:zlib'

const KNOWN_CMAP = 0
const KNOWN_GLYF = 10
const KNOWN_LOCA = 11
const NAMED = 63

interface Cursor {
  readonly bytes: Buffer
  at: number
}

/** Every letter that a WOFF2 file has a glyph for. WOFF File Format 2.0, sections 4 and 5; OpenType, table cmap, formats 4 and 12. */
export function lettersOf(file: string): Set<number> {
  const bytes = readFileSync(file)
  if (bytes.toString('latin1', 0, 4) !== 'wOF2') throw new Error(`${file} is not WOFF2`)
  const cursor: Cursor = { bytes, at: 48 }
  let offset = 0
  let cmap: { from: number; length: number } | undefined
  for (let table = 0; table < bytes.readUInt16BE(12); table += 1) {
    const { kind, length } = directoryEntry(cursor)
    if (kind === KNOWN_CMAP) cmap = { from: offset, length }
    offset += length
  }
  const all = brotliDecompressSync(bytes.subarray(cursor.at, cursor.at + bytes.readUInt32BE(20)))
  if (!cmap) throw new Error(`${file} has no cmap`)
  return readCmap(all.subarray(cmap.from, cmap.from + cmap.length))
}

function directoryEntry(cursor: Cursor): { kind: number; length: number } {
  const flags = cursor.bytes[cursor.at++] ?? 0
  const kind = flags & 63
  if (kind === NAMED) cursor.at += 4
  const original = base128(cursor)
  const version = flags >> 6
  const transformed = kind === KNOWN_GLYF || kind === KNOWN_LOCA ? version === 0 : version !== 0
  return { kind, length: transformed ? base128(cursor) : original }
}

function base128(cursor: Cursor): number {
  let value = 0
  for (;;) {
    const byte = cursor.bytes[cursor.at++] ?? 0
    value = value * 128 + (byte & 127)
    if (byte < 128) return value
  }
}

function readCmap(table: Buffer): Set<number> {
  const letters = new Set<number>()
  for (let index = 0; index < table.readUInt16BE(2); index += 1) {
    const at = table.readUInt32BE(8 + index * 8)
    const format = table.readUInt16BE(at)
    if (format === 4) readFormat4(table, at, letters)
    if (format === 12) readFormat12(table, at, letters)
  }
  return letters
}

function readFormat4(table: Buffer, at: number, letters: Set<number>): void {
  const double = table.readUInt16BE(at + 6)
  for (let segment = 0; segment < double; segment += 2) {
    const end = table.readUInt16BE(at + 14 + segment)
    const start = table.readUInt16BE(at + 16 + double + segment)
    for (let code = start; code <= end && code !== 0xffff; code += 1) letters.add(code)
  }
}

function readFormat12(table: Buffer, at: number, letters: Set<number>): void {
  for (let group = 0; group < table.readUInt32BE(at + 12); group += 1) {
    const from = at + 16 + group * 12
    for (let code = table.readUInt32BE(from); code <= table.readUInt32BE(from + 4); code += 1) letters.add(code)
  }
}
