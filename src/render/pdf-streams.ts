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
  if (!isStream(object)) return object
  const start = /stream\r?\n/u.exec(object)
  const head = object.slice(0, start?.index ?? 0)
  const length = Number(/\/Length (\d+)(?!\d| \d+ R)/u.exec(head)?.[1])
  if (!start || !Number.isFinite(length) || !/\/Filter \/FlateDecode\b/u.test(head)) return object
  const from = start.index + start[0].length
  const packed = repacked(Buffer.from(object.slice(from, from + length), 'latin1'))
  if (!packed) return object
  return `${head.replace(/\/Length \d+/u, `/Length ${packed.length}`)}stream\n${packed.toString('latin1')}\nendstream`
}

function repacked(bytes: Buffer): Buffer | undefined {
  try {
    return deflateSync(inflateSync(bytes), { level: LEVEL })
  } catch {
    return undefined
  }
}
