import { readFile } from 'node:fs/promises'
import { join, normalize, posix, sep } from 'node:path'
import type * as Library from 'pdf-lib'
import type { PDFDocument, PDFPage } from 'pdf-lib'

/** A link of this form holds the place of a page of another file: path beside the document, slash, page from 1. */
const PLACE = /^attach:(.+)\/(\d+)$/u

export interface Bound {
  readonly bytes: Uint8Array
  /** Paths below the root. */
  readonly used: readonly string[]
}

/** Puts the pages of other files where a document holds places for them, each as large as its place allows. Vectors stay vectors. */
export async function bindAttachments(bytes: Uint8Array, root: string, document: string): Promise<Bound> {
  const lib = await import('pdf-lib')
  const binder = await lib.PDFDocument.load(bytes, { updateMetadata: false })
  const files = new Map<string, PDFDocument>()
  for (const page of binder.getPages()) {
    for (const { path, number, rect, empty } of placesOn(page, lib)) {
      const below = posix.join(posix.dirname(document), path)
      const file = files.get(below) ?? (await load(lib.PDFDocument, root, below))
      files.set(below, file)
      const [embedded] = await binder.embedPdf(file, [number - 1])
      if (!embedded) continue
      const scale = Math.min(rect.width / embedded.width, rect.height / embedded.height)
      const [width, height] = [embedded.width * scale, embedded.height * scale]
      const x = rect.x + (rect.width - width) / 2
      page.drawPage(embedded, { x, y: rect.y + rect.height - height, width, height })
      empty()
    }
  }
  return {
    bytes: await binder.save({ useObjectStreams: true, updateFieldAppearances: false }),
    used: [...files.keys()].sort()
  }
}

async function load(library: typeof PDFDocument, root: string, path: string): Promise<PDFDocument> {
  const file = normalize(join(root, path))
  if (!file.startsWith(normalize(join(root, sep)))) throw new Error(`${path} lies outside what may be shown.`)
  return library.load(await readFile(file), { updateMetadata: false })
}

interface Place {
  readonly path: string
  readonly number: number
  readonly rect: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  /** Takes the link away from the place, which leads nowhere. */
  readonly empty: () => void
}

function placesOn(page: PDFPage, { PDFDict, PDFName, PDFArray, PDFString }: typeof Library): Place[] {
  const notes = page.node.Annots()
  if (!notes) return []
  return notes.asArray().flatMap(entry => {
    const note = page.doc.context.lookupMaybe(entry, PDFDict)
    const address = note?.lookupMaybe(PDFName.of('A'), PDFDict)?.lookupMaybe(PDFName.of('URI'), PDFString)
    const match = PLACE.exec(address?.decodeText() ?? '')
    const rect = note?.lookupMaybe(PDFName.of('Rect'), PDFArray)?.asRectangle()
    if (!note || !match || !rect) return []
    const [, path = '', number] = match
    return [{ path: decodeURIComponent(path), number: Number(number), rect, empty: () => note.delete(PDFName.of('A')) }]
  })
}
