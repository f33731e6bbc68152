import { createHash } from 'node:crypto'
import { isStream } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import { packed } from './pdf-streams.ts'

/** Small objects are packed this many to a stream; more gain little and slow a reader that wants one. */
const PACKED_TOGETHER = 400

interface Entry {
  readonly type: 1 | 2
  /** Type 1: offset in the file. Type 2: number of the stream it is packed in. */
  readonly where: number
  /** Type 2: place within the stream. */
  readonly index: number
}

/**
 * Writes the objects packed: object streams and a cross-reference stream (ISO 32000-1:2008, 7.5.7 and 7.5.8). Tags make thousands
 * of small objects, and packed they take a tenth of the room. The document's id is made from its content, so that the same
 * content gives the same bytes.
 */
export function writePdfFile(file: PdfFile): Uint8Array {
  const parts: Buffer[] = []
  const entries = new Map<number, Entry>()
  let length = 0
  const put = (text: string): void => {
    const part = Buffer.from(text, 'latin1')
    parts.push(part)
    length += part.byteLength
  }
  const putObject = (number: number, body: string): void => {
    entries.set(number, { type: 1, where: length, index: 0 })
    put(`${number} 0 obj\n${body}\nendobj\n`)
  }

  put('%PDF-1.7\n%\u00d3\u00eb\u00e9\u00e1\n')
  const numbers = [...file.objects.keys()].sort((a, b) => a - b)
  for (const number of numbers) if (isStream(object(file, number))) putObject(number, object(file, number))
  const small = numbers.filter(number => !isStream(object(file, number)))
  let next = Math.max(...numbers) + 1
  for (let at = 0; at < small.length; at += PACKED_TOGETHER) {
    const together = small.slice(at, at + PACKED_TOGETHER)
    for (const [index, number] of together.entries()) entries.set(number, { type: 2, where: next, index })
    putObject(next, objectStream(together.map(number => [number, object(file, number)])))
    next += 1
  }
  const start = length
  entries.set(next, { type: 1, where: start, index: 0 })
  const id = createHash('sha256').update(Buffer.concat(parts)).digest('hex').slice(0, 32)
  put(`${next} 0 obj\n${crossReference(entries, next + 1, file, id)}\nendobj\nstartxref\n${start}\n%%EOF\n`)
  return new Uint8Array(Buffer.concat(parts))
}

function object(file: PdfFile, number: number): string {
  return file.objects.get(number) ?? 'null'
}

function objectStream(objects: readonly (readonly [number, string])[]): string {
  let offset = 0
  const heads = objects.map(([number, body]) => {
    const head = `${number} ${offset}`
    offset += body.length + 1
    return head
  })
  const head = `${heads.join(' ')}\n`
  const body = head + objects.map(([, text]) => `${text}\n`).join('')
  return stream(`/Type /ObjStm /N ${objects.length} /First ${head.length}`, Buffer.from(body, 'latin1'))
}

/** Seven bytes an entry: type, where (4), index (2). Object 0 is free. */
function crossReference(entries: ReadonlyMap<number, Entry>, size: number, file: PdfFile, id: string): string {
  const table = Buffer.alloc(size * 7)
  for (const [number, { type, where, index }] of entries) {
    table.writeUInt8(type, number * 7)
    table.writeUInt32BE(where, number * 7 + 1)
    table.writeUInt16BE(index, number * 7 + 5)
  }
  table.writeUInt16BE(0xffff, 5)
  const keys = `/Type /XRef /Size ${size} /W [1 4 2] /Root ${file.root} 0 R /Info ${file.info} 0 R /ID [<${id}> <${id}>]`
  return stream(keys, table)
}

function stream(keys: string, content: Buffer): string {
  const body = packed(content)
  return `<<${keys} /Filter /FlateDecode /Length ${body.byteLength}>> stream\n${body.toString('latin1')}\nendstream`
}
