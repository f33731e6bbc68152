import { rmSync } from 'node:fs'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { PDFDocument } from 'pdf-lib'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { printPdf } from '../../src/render/pdf.ts'
import { aBrowser, htmlPage, pdfObjects, printFolder, printJob } from './pdf-fixture.ts'

let opened: OpenBrowser
let root = ''
beforeAll(async () => {
  opened = await aBrowser()
  root = printFolder()
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

const STYLE = `<style>
[data-field] { position: relative }
td { width: 40mm; height: 9mm; border: 0.3mm solid }
.tick { display: inline-block; width: 4mm; height: 4mm; border: 0.3mm solid }
</style>`
const blank = (kind: string, name: string, label = ''): string =>
  `data-field="${kind}" data-name="${name}"${label === '' ? '' : ` data-label="${label}"`}`
const SHEET = `<h1>Visit sheet</h1>
<p><span class="tick" ${blank('tick', 'Visit, step 1', 'Visit, step 1: Close every drain (all of them).')}></span> Close every drain.
Read the meter: <span ${blank('text', 'Visit, meter 0.1 m³')}>________</span></p>
<table><thead><tr><th scope="col">Date</th><th scope="col">Found</th></tr></thead>
<tbody><tr><td ${blank('text', 'Visit, line 1, Time')}></td><td ${blank('text', 'Visit, line 1, Time')}></td></tr></tbody></table>
<h2 id="next" style="break-before: page">Next page</h2><p><a href="#next">Here</a></p>
<p><span class="tick" ${blank('tick', 'Visit, step 2')}></span> Close the lid.</p>`

const printed = async (html: string): Promise<Uint8Array> =>
  (await printPdf(opened.browser, printJob(root, htmlPage(html, STYLE)))).bytes

interface Seen {
  readonly name: string
  readonly page: number
  readonly type: string
  readonly multiline?: boolean
  readonly value: string
  readonly rect: readonly number[]
}

/** The fields as another program reads them. */
async function fieldsOf(bytes: Uint8Array): Promise<Seen[]> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 })
  const found = (await (await task.promise).getFieldObjects()) as Record<string, Omit<Seen, 'name'>[]> | null
  await task.destroy()
  return Object.entries(found ?? {}).flatMap(([name, all]) =>
    all.map(({ page, type, multiline, value, rect }) => ({
      name,
      page,
      type,
      value,
      rect,
      ...(multiline === undefined ? {} : { multiline })
    }))
  )
}

interface Node {
  readonly role?: string
  readonly type?: string
  readonly children?: readonly Node[]
}

/** Roles of the nodes that hold an annotation. */
async function annotated(bytes: Uint8Array, number: number): Promise<string[]> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 })
  const tree = (await (await (await task.promise).getPage(number)).getStructTree()) as Node
  await task.destroy()
  const walk = (node: Node): string[] =>
    (node.children ?? []).flatMap(child => (child.type === 'annotation' ? [node.role ?? ''] : walk(child)))
  return walk(tree)
}

/** Each page as pixels by a third program, and what it finds dark in a rectangle of points from the foot. */
async function picture(bytes: Uint8Array, number: number) {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(bytes)
  const page = document.getPage(number - 1)
  const { data, width, height } = await page.render({ scale: 2, render: 'bitmap', renderFormFields: true })
  const pixels = new Uint8Array(data)
  document.destroy()
  library.destroy()
  const dark = ([left = 0, bottom = 0, right = 0, top = 0]: readonly number[]): number => {
    let count = 0
    for (let y = Math.ceil(height - 2 * top); y < height - 2 * bottom; y += 1)
      for (let x = Math.ceil(2 * left); x < 2 * right; x += 1)
        if ((pixels[4 * (y * width + x)] ?? 255) < 128) count += 1
    return count
  }
  return { pixels, dark }
}

describe('blanks of a print', () => {
  it('are fields, each with a name of its own, in reading order and on its page', async () => {
    const fields = await fieldsOf(await printed(SHEET))
    expect(fields.map(({ name, page, type }) => [name, page + 1, type])).toEqual([
      ['Visit, step 1', 1, 'checkbox'],
      ['Visit, meter 0·1 m³', 1, 'text'],
      ['Visit, line 1, Time', 1, 'text'],
      ['Visit, line 1, Time (2)', 1, 'text'],
      ['Visit, step 2', 2, 'checkbox']
    ])
  })

  it('take several lines where they are tall', async () => {
    const fields = await fieldsOf(await printed(SHEET))
    expect(fields.filter(one => one.multiline).map(one => one.name)).toEqual([
      'Visit, line 1, Time',
      'Visit, line 1, Time (2)'
    ])
  })

  it('say what they are for to those who cannot see them', async () => {
    const fields = (await PDFDocument.load(await printed(SHEET))).getForm().getFields()
    const told = fields.map(field => field.acroField.dict.entries().find(([key]) => String(key) === '/TU')?.[1])
    expect(String(told[0])).toBe('(Visit, step 1: Close every drain \\(all of them\\).)')
    expect(told).not.toContain(undefined)
  })

  it('are form fields in the structure, where other links stay links', async () => {
    const bytes = await printed(SHEET)
    expect(await annotated(bytes, 1)).toEqual(['Form', 'Form', 'Form', 'Form'])
    const objects = pdfObjects(bytes)
    expect(objects.match(/\/S \/Form\b/gu)).toHaveLength(5)
    expect(objects.match(/\/S \/Link\b/gu)).toHaveLength(1)
    expect(objects).not.toContain('field:')
  })

  it('change nothing on paper', async () => {
    const plain = await picture(await printed(SHEET.replaceAll('data-field', 'data-none')), 1)
    const own = await picture(await printed(SHEET), 1)
    const other = own.pixels.filter((value, index) => value !== plain.pixels[index])
    expect(other).toHaveLength(0)
  })

  it('filled in by one program are read by another and shown by a third', async () => {
    const empty = await printed(SHEET)
    const document = await PDFDocument.load(empty)
    const form = document.getForm()
    form.getTextField('Visit, line 1, Time').setText('07:40, two leaks')
    form.getCheckBox('Visit, step 1').check()
    const filled = await document.save()
    const fields = await fieldsOf(filled)
    const values = new Map(fields.map(({ name, value }) => [name, value]))
    expect(values.get('Visit, line 1, Time')).toBe('07:40, two leaks')
    expect([values.get('Visit, step 1'), values.get('Visit, step 2')]).toEqual(['Yes', 'Off'])
    const [before, after] = [await picture(empty, 1), await picture(filled, 1)]
    for (const { name, rect } of fields.filter(one => one.page === 0)) {
      const isFilled = ['Visit, line 1, Time', 'Visit, step 1'].includes(name)
      expect(after.dark(rect) > before.dark(rect), name).toBe(isFilled)
    }
  })

  it('that stand nowhere on paper stop the print', async () => {
    const hidden = SHEET.replace('<td data-field', '<td style="display: none" data-field')
    await expect(printed(hidden)).rejects.toThrow('The blank "Visit, line 1, Time" has no one place on paper.')
  })

  it('give the same bytes twice', async () => {
    const job = printJob(root, htmlPage(SHEET, STYLE))
    const [one, two] = [await printPdf(opened.browser, job), await printPdf(opened.browser, job)]
    expect(Buffer.from(one.bytes).equals(Buffer.from(two.bytes))).toBe(true)
  })

  it('are not there in a document without any', async () => {
    const bytes = await printed('<h1>Text</h1>')
    expect(await fieldsOf(bytes)).toEqual([])
    expect(pdfObjects(bytes)).not.toContain('/AcroForm')
  })
})
