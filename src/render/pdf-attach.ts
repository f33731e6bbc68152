import { largestNumber, notesOf, pagesOf } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import type { ReadySheets } from './pdf-sheets.ts'

/** The action of a link that holds a place: a string, in which marks may be escaped. ISO 32000-1:2008, 7.3.4.2 and 12.6.4.7. */
const ACTION = /\/A <<[^<>]*\/URI \((attach:(?:\\.|[^\\)])*)\)\s*>>/u

interface Place {
  readonly address: string
  readonly rect: readonly number[]
}

/**
 * Puts pages of other files where a print holds places for them, each as large as its place allows, at its top. The links that held the
 * places lead nowhere and are emptied. Throws where a page of the print is not of the form that browsers write.
 */
export function bindSheets(file: PdfFile, sheets: ReadySheets): PdfFile {
  if (sheets.sizes.size === 0) return file
  const objects = new Map(file.objects)
  const first = largestNumber(file) + 1
  const { objects: parts, forms } = sheets.numberedFrom(first)
  for (const [number, part] of parts) objects.set(number, part)
  let next = first + parts.size
  const add = (object: string): number => {
    objects.set(next, object)
    return next++
  }
  for (const page of pagesOf(file)) {
    const places = placesOn(file, page)
    if (places.length === 0) continue
    for (const { note, text } of places) objects.set(note, text.replace(ACTION, ''))
    const drawn = places.flatMap(({ address, rect }) => {
      const [form, size] = [forms.get(address), sheets.sizes.get(address)]
      if (!size) throw new Error(`A place for ${address} came up that the document did not have.`)
      return form === undefined ? [] : [{ form, drawing: drawing(form, size, rect) }]
    })
    objects.set(page, withDrawings(objects.get(page) ?? '', drawn, add))
  }
  return { ...file, objects }
}

function placesOn(file: PdfFile, page: number): (Place & { readonly note: number; readonly text: string })[] {
  return notesOf(file, page).flatMap(note => {
    const text = file.objects.get(note) ?? ''
    const address = ACTION.exec(text)?.[1]?.replace(/\\(.)/gu, '$1')
    const rect = /\/Rect \[([^\]]*)\]/u.exec(text)?.[1]?.trim().split(/\s+/u).map(Number)
    return address === undefined || !rect ? [] : [{ note, text, address, rect }]
  })
}

const nameOf = (form: number): string => `Sheet${form}`

/** ISO 32000-1:2008, 8.3.4 (matrices) and 8.10.1 (forms). */
function drawing(form: number, [width, height]: readonly [number, number], rect: readonly number[]): string {
  const [left = 0, bottom = 0, right = 0, top = 0] = rect
  const scale = Math.min((right - left) / width, (top - bottom) / height)
  const x = left + (right - left - width * scale) / 2
  const y = top - height * scale
  const matrix = [scale, 0, 0, scale, x, y].map(value => Number(value.toFixed(5)))
  return `q ${matrix.join(' ')} cm /${nameOf(form)} Do Q`
}

/** What a page draws of its own is closed off first, so that its units do not reach what is drawn after. */
function withDrawings(
  page: string,
  drawn: readonly { readonly form: number; readonly drawing: string }[],
  add: (object: string) => number
): string {
  if (drawn.length === 0) return page
  const before = add(content('q'))
  const after = add(content(`Q\n${drawn.map(one => one.drawing).join('\n')}`))
  const contents = replaced(page, /\/Contents (\d+ 0 R)/u, `/Contents [${before} 0 R $1 ${after} 0 R]`)
  const forms = [...new Set(drawn.map(one => one.form))].map(form => `/${nameOf(form)} ${form} 0 R`).join(' ')
  return contents.includes('/XObject <<')
    ? contents.replace('/XObject <<', `/XObject <<${forms} `)
    : replaced(contents, /\/Resources <</u, `/Resources <</XObject <<${forms}>> `)
}

const content = (text: string): string => `<</Length ${text.length}>> stream\n${text}\nendstream`

function replaced(text: string, what: RegExp, by: string): string {
  if (!what.test(text)) throw new Error('The browser wrote a page of a form that is not known here.')
  return text.replace(what, by)
}
