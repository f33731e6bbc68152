import type { Page } from 'puppeteer'
import { largestNumber, notesOf, pagesOf, reference } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import { pdfText } from './pdf-string.ts'

/** A blank of a form that can be filled in on a screen too. */
export interface FormField {
  readonly kind: 'text' | 'tick'
  /** As programs and people name it; each stands once in a document. */
  readonly name: string
  /** What is read aloud at it. */
  readonly label: string
}

/*
 * Runs in the page. A link that covers a blank leaves its place in the print, with a node of its own in the structure; links of this
 * form lead nowhere and are made into fields.
 */
const PLACE = `[...document.querySelectorAll('[data-field]')].map((blank, index) => {
  const place = document.createElement('a')
  place.href = 'field:' + index
  place.style.cssText = 'position:absolute;inset:0.3mm'
  blank.append(place)
  const { field, name, label } = blank.dataset
  return { kind: field, name, label: label ?? name }
})`

/** Marks the place of each blank of the document, in order. To be asked once, before it is printed. */
export async function placeFields(page: Page): Promise<readonly FormField[]> {
  return named((await page.evaluate(PLACE)) as FormField[])
}

/** A second of a name gets its number. A full stop would part a name from the one it stands below: ISO 32000-1:2008, 12.7.3.2. */
function named(fields: readonly FormField[]): FormField[] {
  const counts = new Map<string, number>()
  return fields.map(field => {
    const name = field.name.replace(/\.(?=,|$)/gu, '').replaceAll('.', '\u00b7')
    const count = (counts.get(name) ?? 0) + 1
    counts.set(name, count)
    return { ...field, name: count === 1 ? name : `${name} (${count})` }
  })
}

/**
 * The print with a form field in place of each link that marks a blank: ISO 32000-1:2008, 12.7 (forms) and 14.8.4.5 (their nodes in the
 * structure). The paper looks as it did: a field brings no line and no ground of its own.
 */
export function withFields(file: PdfFile, fields: readonly FormField[]): PdfFile {
  if (fields.length === 0) return file
  const objects = new Map(file.objects)
  let last = largestNumber(file)
  const add = (object: string): number => {
    objects.set((last += 1), object)
    return last
  }
  const [off, on] = [add(drawn('')), add(drawn('q 1.6 w 2 2 m 10 10 l 2 10 m 10 2 l S Q'))]
  const made: number[] = []
  for (const page of pagesOf(file))
    for (const note of notesOf(file, page)) {
      const object = objects.get(note) ?? ''
      const field = fields[placeIn(object)]
      if (!field) continue
      objects.set(note, widget(object, page, field, { off, on }))
      made.push(note)
    }
  const nodes = new Set(made)
  for (const [number, object] of file.objects)
    if (object.includes('/S /Link') && nodes.has(reference(object, 'Obj') ?? -1))
      objects.set(number, object.replace('/S /Link', '/S /Form'))
  const font = add('<</Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding>>')
  const list = made.map(note => `${note} 0 R`).join(' ')
  const form = add(`<</Fields [${list}] /DR <</Font <</Helv ${font} 0 R>>>> /DA (/Helv 8 Tf 0 g)>>`)
  objects.set(file.root, (objects.get(file.root) ?? '').replace(/>>$/u, `\n/AcroForm ${form} 0 R>>`))
  return { ...file, objects }
}

/** Number of the blank whose place it is; none of another link. */
const placeIn = (note: string): number => Number(/\/URI \(field:(\d+)\)/u.exec(note)?.[1])

/** In words, blanks that a print does not show once: it would have no field for them, or two of one name. */
export function lostFields(file: PdfFile, fields: readonly FormField[]): string[] {
  if (fields.length === 0) return []
  const shown = new Map<number, number>()
  for (const note of pagesOf(file).flatMap(page => notesOf(file, page))) {
    const place = placeIn(file.objects.get(note) ?? '')
    shown.set(place, (shown.get(place) ?? 0) + 1)
  }
  return fields
    .filter((_, index) => shown.get(index) !== 1)
    .map(({ name }) => `The blank "${name}" has no one place on paper.`)
}

/** Side of the drawing of a tick, which a reader stretches over its field. */
const TICK = 12

function drawn(content: string): string {
  const head = `/Type /XObject /Subtype /Form /BBox [0 0 ${TICK} ${TICK}] /Resources <<>> /Length ${content.length}`
  return `<<${head}>> stream\n${content}\nendstream`
}

/** Two lines of the type fit in, points. */
const TALL = 20
/** Several lines, and no more than the blank can show: ISO 32000-1:2008, table 228. */
const MULTILINE = 1 << 12
const NO_SCROLL = 1 << 23

function widget(
  link: string,
  page: number,
  { kind, name, label }: FormField,
  tick: { off: number; on: number }
): string {
  const rect = /\/Rect \[([^\]]*)\]/u.exec(link)?.[1] ?? ''
  const parent = /\/StructParent \d+/u.exec(link)?.[0] ?? ''
  const shared = `/Type /Annot /Subtype /Widget /F 4 /Border [0 0 0] /Rect [${rect}] /P ${page} 0 R ${parent}`
  const names = `/T ${pdfText(name)} /TU ${pdfText(label)}`
  if (kind === 'tick')
    return `<<${shared} /FT /Btn ${names} /V /Off /AS /Off /MK <</CA (8)>> /AP <</N <</Off ${tick.off} 0 R /Yes ${tick.on} 0 R>>>>>>`
  const [, bottom = 0, , top = 0] = rect.trim().split(/\s+/u).map(Number)
  const lines = Math.abs(top - bottom) >= TALL ? MULTILINE : 0
  return `<<${shared} /FT /Tx ${names} /Ff ${NO_SCROLL | lines} /DA (/Helv 8 Tf 0 g)>>`
}
