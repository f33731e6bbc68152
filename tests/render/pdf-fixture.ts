import { copyFileSync, mkdtempSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { isNoBrowser, openBrowser } from '../../src/render/browser.ts'
import type { OpenBrowser } from '../../src/render/browser.ts'
import type { PrintJob } from '../../src/render/pdf.ts'
import { date } from '../../src/units/date.ts'

/** A browser, or a failure that lists where it was looked: tests that print are not passed over. */
export async function aBrowser(): Promise<OpenBrowser> {
  const opened = await openBrowser()
  if (isNoBrowser(opened)) throw new Error(opened.told.join('\n'))
  return opened
}

const TYPE = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2'

/** A temporary folder with a style sheet and one cut of type. */
export function printFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-print-'))
  copyFileSync(createRequire(import.meta.url).resolve(TYPE), join(folder, 'type.woff2'))
  writeFileSync(join(folder, 'print.css'), CSS)
  return folder
}

const CSS = `@font-face { font-family: Binder; src: url(type.woff2) }
@page { size: A4; margin: 20mm; @bottom-right { content: counter(page) " / " counter(pages) } }
body { font-family: Binder, sans-serif }
section { break-before: page }
.page-number { display: inline-block; width: 3em; text-align: right }`

/** Sections that are so many pages long each, behind a page of contents. */
export function binderHtml(lengths: readonly number[], more = ''): string {
  const entries = lengths.map(
    (_, index) =>
      `<li><a href="#s${index}">Section ${index} <span class="page-number" data-target="s${index}"></span></a></li>`
  )
  const sections = lengths.map((pages, index) => {
    const body = Array.from({ length: pages }, (_, page) =>
      page === 0 ? '' : '<p style="break-before: page">More</p>'
    )
    return `<section><h1 id="s${index}">Section ${index} with Ω</h1>${TABLE}${body.join('')}</section>`
  })
  return htmlPage(`<h1>Contents</h1><ol>${entries.join('')}</ol>${sections.join('')}${more}`)
}

const TABLE = `<table><thead><tr><th scope="col">Station</th><th scope="col">Loop</th></tr></thead>
<tbody><tr><th scope="row">1</th><td>4.4 Ω</td></tr><tr><th scope="row">2</th><td>5.1 Ω</td></tr></tbody></table>`

export function htmlPage(body: string, head = '', language = 'en-US'): string {
  return `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><title>Kestrel Cross (binder) – Ω</title>
<link rel="stylesheet" href="print.css">${head}</head><body>${body}</body></html>`
}

let documents = 0

/** Writes the document into the folder, under a name of its own, since two may be printed at once. */
export function printJob(root: string, html: string, changes: Partial<PrintJob> = {}): PrintJob {
  const path = `binder-${(documents += 1)}.html`
  writeFileSync(join(root, path), html)
  return {
    root,
    path,
    base: 'HTTPS://EXAMPLE.ORG/',
    paper: 'A4',
    on: date('2026-05-01'),
    ...changes
  }
}

/** The objects of a finished print by number, as text; the packed ones unpacked. ISO 32000-1:2008, 7.5.7. */
export function pdfObjectMap(bytes: Uint8Array): Map<number, string> {
  const text = Buffer.from(bytes).toString('latin1')
  const objects = new Map<number, string>()
  for (const [, number, body] of text.matchAll(/^(\d+) 0 obj\n([^]*?)\nendobj$/gmu))
    objects.set(Number(number), body ?? '')
  for (const body of [...objects.values()].filter(object => object.startsWith('<</Type /ObjStm'))) {
    const [head, ...rest] = body.split('stream\n')
    const packed = inflateSync(Buffer.from(rest.join('stream\n'), 'latin1')).toString('latin1')
    const first = Number(/\/First (\d+)/u.exec(head ?? '')?.[1])
    const pairs = packed.slice(0, first).trim().split(' ').map(Number)
    for (let at = 0; at < pairs.length; at += 2) {
      const [number = 0, offset = 0, , next] = pairs.slice(at, at + 4)
      objects.set(number, packed.slice(first + offset, next === undefined ? undefined : first + next))
    }
  }
  return objects
}

export function pdfObjects(bytes: Uint8Array): string {
  return [...pdfObjectMap(bytes).values()].join('\n')
}
