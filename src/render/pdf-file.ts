/**
 * A PDF as the browser writes it: numbered objects in plain text, a cross-reference table, a trailer. Read just far enough to
 * rewrite it. ISO 32000-1:2008, 7.5 (file structure).
 */
export interface PdfFile {
  /** By object number. Text of the object between "obj" and "endobj", one character a byte. */
  readonly objects: ReadonlyMap<number, string>
  readonly root: number
  readonly info: number
}

/** Undefined where the file is not of the expected plain form; nothing is guessed. */
export function readPdfFile(bytes: Uint8Array): PdfFile | undefined {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1')
  const table = /startxref\s+(\d+)\s+%%EOF\s*$/u.exec(text.slice(-64))
  const start = Number(table?.[1] ?? Number.NaN)
  const head = /^xref\s+0 (\d+)\s+/u.exec(text.slice(start, start + 32))
  const trailer = /trailer\s*<<([^]*?)>>\s*startxref/u.exec(text.slice(start))
  if (!head || !trailer) return undefined
  const offsets = readOffsets(text.slice(start + head[0].length), Number(head[1]))
  const objects = readObjects(text, offsets, start)
  const [root, info] = [reference(trailer[1], 'Root'), reference(trailer[1], 'Info')]
  if (!objects || root === undefined || info === undefined) return undefined
  return { objects, root, info }
}

/** The same, and a throw for a form that is not known. */
export function knownPdfFile(bytes: Uint8Array): PdfFile {
  const file = readPdfFile(bytes)
  if (!file) throw new Error('The browser wrote a PDF of a form that is not known here.')
  return file
}

export const isStream = (object: string): boolean => object.trimEnd().endsWith('endstream')

/** Object number behind "/Key 12 0 R". */
export function reference(dictionary: string | undefined, key: string): number | undefined {
  const match = new RegExp(`/${key} (\\d+) 0 R`, 'u').exec(dictionary ?? '')
  return match ? Number(match[1]) : undefined
}

/** Object numbers of the pages, in order. ISO 32000-1:2008, 7.7.3. */
export function pagesOf(file: PdfFile): number[] {
  const below = (number: number): number[] => {
    const object = file.objects.get(number) ?? ''
    if (!/\/Type \/Pages\b/u.test(object)) return [number]
    const kids = /\/Kids \[([^\]]*)\]/u.exec(object)?.[1] ?? ''
    return [...kids.matchAll(/(\d+) 0 R/gu)].flatMap(match => below(Number(match[1])))
  }
  const root = reference(file.objects.get(file.root), 'Pages')
  return root === undefined ? [] : below(root)
}

/** Page, from 1, of every named destination whose name is plain. ISO 32000-1:2008, 12.3.2.3. */
export function destinationsOf(file: PdfFile): ReadonlyMap<string, number> {
  const pages = new Map(pagesOf(file).map((page, index) => [page, index + 1]))
  const named = file.objects.get(reference(file.objects.get(file.root), 'Dests') ?? -1) ?? ''
  const found = [...named.matchAll(/\/([\w.-]+) \[(\d+) 0 R/gu)].map(
    ([, name = '', page]) => [name, pages.get(Number(page))] as const
  )
  return new Map(found.flatMap(([name, page]) => (page === undefined ? [] : [[name, page]])))
}

/** Object numbers of a page's notes: its links and fields. ISO 32000-1:2008, 12.5.2. */
export function notesOf(file: PdfFile, page: number): number[] {
  const notes = /\/Annots \[([^\]]*)\]/u.exec(file.objects.get(page) ?? '')?.[1] ?? ''
  return [...notes.matchAll(/(\d+) 0 R/gu)].map(match => Number(match[1]))
}

/** The largest object number; what is added counts on from it. */
export function largestNumber({ objects }: PdfFile): number {
  let largest = 0
  for (const number of objects.keys()) largest = Math.max(largest, number)
  return largest
}

/** Pages, from 1, that link to one of the names. */
export function pagesLinkingTo(file: PdfFile, names: readonly string[]): number[] {
  const wanted = new Set(names)
  return pagesOf(file).flatMap((page, index) => {
    const leads = notesOf(file, page).some(note => {
      const name = /\/Dest \/([\w.-]+)/u.exec(file.objects.get(note) ?? '')?.[1]
      return name !== undefined && wanted.has(name)
    })
    return leads ? [index + 1] : []
  })
}

/** Entries are twenty bytes: "0000000015 00000 n". The first is the head of the free list. */
function readOffsets(table: string, count: number): Map<number, number> {
  const offsets = new Map<number, number>()
  for (let number = 1; number < count; number += 1) {
    const entry = table.slice(number * 20, number * 20 + 20)
    if (entry[17] === 'n') offsets.set(number, Number(entry.slice(0, 10)))
  }
  return offsets
}

function readObjects(text: string, offsets: Map<number, number>, end: number): Map<number, string> | undefined {
  const order = [...offsets].sort((a, b) => a[1] - b[1])
  const objects = new Map<number, string>()
  for (const [index, [number, offset]] of order.entries()) {
    const slice = text.slice(offset, order[index + 1]?.[1] ?? end).trimEnd()
    const opening = `${number} 0 obj`
    if (!slice.startsWith(opening) || !slice.endsWith('endobj')) return undefined
    objects.set(number, slice.slice(opening.length, -'endobj'.length).trim())
  }
  return objects
}
