import { inflateSync } from 'node:zlib'
import { zlibSync } from 'fflate'
import { isStream } from './pdf-file.ts'

/** Higher ones take up to twice as long: a binder gains a thirtieth of its size, and a sheet of codes, which is all paths, loses a fortieth. */
const LEVEL = 3

/**
 * Packs, ISO 32000-1:2008, 7.4.4, the same bytes on every machine: the packers of browsers and of Node choose by what the processor can do, and
 * by their version.
 */
export function packed(plain: Uint8Array): Buffer {
  return Buffer.from(zlibSync(plain, { level: LEVEL }))
}

/** The objects with what is packed packed anew, so that the same content has the same bytes. ISO 32000-1:2008, 7.3.8. */
export function withEvenStreams(objects: ReadonlyMap<number, string>): Map<number, string> {
  return new Map([...objects].map(([number, object]) => [number, packedAnew(object)]))
}

/** Streams of another packing, and those that cannot be unpacked, stay as they are. */
function packedAnew(object: string): string {
  const plain = unpacked(object)
  if (!plain) return object
  const body = packed(plain)
  const head = object.slice(0, STREAM.exec(object)?.index).replace(/\/Length \d+/u, `/Length ${body.length}`)
  return `${head}stream\n${body.toString('latin1')}\nendstream`
}

const STREAM = /stream\r?\n/u

/** What a packed stream holds; undefined for any other object, and where it cannot be unpacked. */
export function unpacked(object: string): Buffer | undefined {
  const start = isStream(object) ? STREAM.exec(object) : null
  if (!start) return undefined
  const head = object.slice(0, start.index)
  const length = Number(/\/Length (\d+)(?!\d| \d+ R)/u.exec(head)?.[1])
  if (!Number.isFinite(length) || !/\/Filter \/FlateDecode\b/u.test(head)) return undefined
  const from = start.index + start[0].length
  try {
    return inflateSync(Buffer.from(object.slice(from, from + length), 'latin1'))
  } catch {
    return undefined
  }
}
