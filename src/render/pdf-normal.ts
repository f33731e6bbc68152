import { readPdfFile } from './pdf-file.ts'
import { withEvenNodeNames } from './pdf-node-names.ts'
import { writePdfFile } from './pdf-write.ts'
import type { IsoDate } from '../units/date.ts'

export interface PdfFacts {
  readonly title: string
  /** The day that stands for the time of making. */
  readonly on: IsoDate
}

const PRODUCER = 'Underlid'

/**
 * The same document from a browser's print, free of what differs from one print to the next: the time of day, and the names of the
 * structure's nodes, which depend on what else the browser had been doing. Packed, with the title, producer and day given.
 * Throws where the browser wrote a form that is not known.
 */
export function normalizePdf(bytes: Uint8Array, facts: PdfFacts): Uint8Array {
  const file = readPdfFile(bytes)
  if (!file) throw new Error('The browser wrote a PDF of a form that is not known here.')
  const objects = new Map(withEvenNodeNames(file))
  objects.set(file.info, infoDictionary(facts))
  objects.set(file.root, withOutlineShown(objects.get(file.root) ?? ''))
  return writePdfFile({ ...file, objects })
}

function infoDictionary({ title, on }: PdfFacts): string {
  const day = `(D:${on.replaceAll('-', '')}000000Z)`
  const maker = pdfText(PRODUCER)
  return `<</Title ${pdfText(title)} /Creator ${maker} /Producer ${maker} /CreationDate ${day} /ModDate ${day}>>`
}

/** Opens with its bookmarks beside it, where there are any. */
function withOutlineShown(catalog: string): string {
  if (!catalog.includes('/Outlines') || catalog.includes('/PageMode')) return catalog
  return catalog.replace(/>>$/u, '\n/PageMode /UseOutlines>>')
}

/** A text string: as written where it is plain ASCII, else UTF-16 with its mark. ISO 32000-1:2008, 7.9.2.2. */
function pdfText(text: string): string {
  if (/^[\x20-\x7e]*$/u.test(text)) return `(${text.replace(/[\\()]/gu, char => `\\${char}`)})`
  const units = [0xfeff, ...Array.from({ length: text.length }, (_, index) => text.charCodeAt(index))]
  return `<${units.map(unit => unit.toString(16).padStart(4, '0')).join('')}>`
}
