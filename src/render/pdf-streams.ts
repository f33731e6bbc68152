import { deflateSync, inflateSync } from 'node:zlib'
import { isStream } from './pdf-file.ts'

/** The level that browsers pack at; higher ones take longer and gain little. */
const LEVEL = 6

/**
 * The objects with what is packed packed anew. What a browser's own packer gives depends on the processor it runs on, and now and then on
 * what its memory held before; the same content then has other bytes. ISO 32000-1:2008, 7.3.8 and 7.4.4.
 */
export function withEvenStreams(objects: ReadonlyMap<number, string>): Map<number, string> {
  return new Map([...objects].map(([number, object]) => [number, packedAnew(object)]))
}

/** Streams of another packing, and those that cannot be unpacked, stay as they are. */
function packedAnew(object: string): string {
  const plain = unpacked(object)
  if (!plain) return object
  const packed = deflateSync(plain, { level: LEVEL })
  const head = object.slice(0, STREAM.exec(object)?.index).replace(/\/Length \d+/u, `/Length ${packed.length}`)
  return `${head}stream\n${packed.toString('latin1')}\nendstream`
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
