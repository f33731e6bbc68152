import { isStream } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import { withEvenNodeNames } from './pdf-node-names.ts'
import { withEvenStreams } from './pdf-streams.ts'
import { inPdf, pdfText } from './pdf-string.ts'
import type { IsoDate } from '../units/date.ts'

export interface PdfFacts {
  readonly title: string
  /** The day that stands for the time of making. */
  readonly on: IsoDate
  /** The folder's own address in links, and the public one that stands for it. */
  readonly links?: { readonly from: string; readonly to: string }
}

const PRODUCER = 'Underlid'

/**
 * The same document from a browser's print, free of what differs from one print to the next: the time of day, the packing of what is
 * packed, and the names of the structure's nodes, which depend on what else the browser had been doing. With the title, producer and day given, and with public
 * addresses in its links.
 */
export function normalizePdf(file: PdfFile, facts: PdfFacts): PdfFile {
  const objects = withEvenStreams(withPublicLinks(withEvenNodeNames(file), facts.links))
  objects.set(file.info, infoDictionary(facts))
  objects.set(file.root, withOutlineShown(objects.get(file.root) ?? ''))
  return { ...file, objects }
}

function withPublicLinks(objects: ReadonlyMap<number, string>, links: PdfFacts['links']): Map<number, string> {
  const even = new Map(objects)
  if (!links) return even
  const [from, to] = [`/URI (${inPdf(links.from)}`, `/URI (${inPdf(links.to)}`]
  for (const [number, object] of objects)
    if (object.includes(from) && !isStream(object)) even.set(number, object.replaceAll(from, to))
  return even
}

/** Links that lead to a file of this machine. */
export function linksToFiles({ objects }: PdfFile, from: string): string[] {
  return [...objects.values()]
    .filter(object => object.includes('/URI (file:') && !isStream(object))
    .flatMap(object => [...object.matchAll(/\/URI \((file:[^)]*)\)/gu)].map(match => match[1] ?? ''))
    .filter(address => !address.startsWith(inPdf(from)))
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
