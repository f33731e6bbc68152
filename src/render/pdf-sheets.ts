import { readFile } from 'node:fs/promises'
import { join, normalize, posix, sep } from 'node:path'
import type * as Library from 'pdf-lib'
import type { PDFDocument, PDFEmbeddedPage, PDFPage } from 'pdf-lib'
import { groupBy } from '../base/collections.ts'

/** A link of this form holds the place of a page of another file: path beside the document, slash, page from 1. */
const PLACE = /^attach:(.+)\/(\d+)$/u

/** Pages of other files, ready to be drawn: each a form of its own. ISO 32000-1:2008, 8.10. */
export interface ReadySheets {
  /** By the address of its place: width and height as it is seen, points. */
  readonly sizes: ReadonlyMap<string, readonly [number, number]>
  /** What the sheets are made of, numbered from `first` on, and the number of each address's form. */
  readonly numberedFrom: (first: number) => NumberedSheets
  /** Files they come from: paths below the root. */
  readonly used: readonly string[]
}

export interface NumberedSheets {
  readonly objects: ReadonlyMap<number, string>
  /** An empty sheet, which nothing is drawn on, has none. */
  readonly forms: ReadonlyMap<string, number>
}

interface Wanted {
  readonly address: string
  /** Below the root. */
  readonly path: string
  /** From 1. */
  readonly number: number
}

/**
 * Reads the pages that have a place in a document, by the addresses of the places. Vectors stay vectors, and what pages of a file share
 * is kept once. Throws where a file lies outside the root, cannot be read or lacks the page.
 */
export async function readySheets(addresses: readonly string[], root: string, document: string): Promise<ReadySheets> {
  const wanted = [...new Set(addresses)].flatMap(address => placeOf(address, document))
  if (wanted.length === 0) return NONE
  const library = await import('pdf-lib')
  const gathered = await library.PDFDocument.create()
  const sheets: Sheet[] = []
  const files = groupBy(wanted, ({ path }) => path)
  for (const [path, own] of files)
    sheets.push(...(await embedded(gathered, await load(library.PDFDocument, root, path), own)))
  await gathered.flush()
  return {
    sizes: new Map(sheets.map(({ address, size }) => [address, size])),
    numberedFrom: first => numbered(library, gathered, sheets, first),
    used: [...files.keys()].sort()
  }
}

const NONE: ReadySheets = {
  sizes: new Map(),
  numberedFrom: () => ({ objects: new Map(), forms: new Map() }),
  used: []
}

function placeOf(address: string, document: string): Wanted[] {
  const [, path, number] = PLACE.exec(address) ?? []
  if (path === undefined) return []
  return [{ address, path: posix.join(posix.dirname(document), decodeURIComponent(path)), number: Number(number) }]
}

async function load(library: typeof PDFDocument, root: string, path: string): Promise<PDFDocument> {
  const file = normalize(join(root, path))
  if (!file.startsWith(normalize(join(root, sep)))) throw new Error(`${path} lies outside what may be shown.`)
  return library.load(await readFile(file), { updateMetadata: false })
}

interface Sheet {
  readonly address: string
  readonly size: readonly [number, number]
  readonly form?: PDFEmbeddedPage | undefined
}

async function embedded(into: PDFDocument, file: PDFDocument, wanted: readonly Wanted[]): Promise<Sheet[]> {
  const pages = file.getPages()
  const sheets = wanted.map(({ address, path, number }) => {
    const page = pages[number - 1]
    if (!page) throw new Error(`${path} has no page ${number}.`)
    return { address, page, view: viewOf(page) }
  })
  const drawn = sheets.filter(({ page }) => page.node.Contents())
  const forms = await into.embedPages(
    drawn.map(({ page }) => page),
    drawn.map(({ view }) => view.box),
    drawn.map(({ view }) => [...view.matrix])
  )
  const formOf = new Map(drawn.map(({ address }, index) => [address, forms[index]]))
  return sheets.map(({ address, view: { size } }) => ({ address, size, form: formOf.get(address) }))
}

interface View {
  readonly box: { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number }
  /** Puts the box upright, with its lower left corner at zero. */
  readonly matrix: readonly [number, number, number, number, number, number]
  readonly size: readonly [number, number]
}

/** What is seen of a page: its crop box, turned as it says. ISO 32000-1:2008, 7.7.3.3 and 14.11.2. */
function viewOf(page: PDFPage): View {
  const { x: left, y: bottom, width, height } = page.getCropBox()
  const [right, top] = [left + width, bottom + height]
  const box = { left, bottom, right, top }
  const turned = ((page.getRotation().angle % 360) + 360) % 360
  if (turned === 90) return { box, matrix: [0, -1, 1, 0, -bottom, right], size: [height, width] }
  if (turned === 180) return { box, matrix: [-1, 0, 0, -1, right, top], size: [width, height] }
  if (turned === 270) return { box, matrix: [0, 1, -1, 0, top, -left], size: [height, width] }
  return { box, matrix: [1, 0, 0, 1, -left, -bottom], size: [width, height] }
}

/** Copies what the forms need and nothing else of their files. */
function numbered(
  { PDFContext, PDFObjectCopier }: typeof Library,
  from: PDFDocument,
  sheets: readonly Sheet[],
  first: number
): NumberedSheets {
  const context = PDFContext.create()
  context.largestObjectNumber = first - 1
  const copier = PDFObjectCopier.for(from.context, context)
  const forms = sheets.flatMap(({ address, form }) =>
    form ? [[address, copier.copy(form.ref).objectNumber] as const] : []
  )
  const objects = context.enumerateIndirectObjects().map(([{ objectNumber }, object]) => {
    const bytes = new Uint8Array(object.sizeInBytes())
    object.copyBytesInto(bytes, 0)
    return [objectNumber, Buffer.from(bytes.buffer).toString('latin1')] as const
  })
  return { objects: new Map(objects), forms: new Map(forms) }
}
