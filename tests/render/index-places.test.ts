import { rmSync } from 'node:fs'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { printPdf } from '../../src/render/pdf.ts'
import { aBrowser, htmlPage, printFolder, printJob } from './pdf-fixture.ts'

let opened: OpenBrowser
const root = printFolder()
beforeAll(async () => void (opened = await aBrowser()))
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

const link = (id: string): string => `<a href="#${id}"><span class="page-number" data-target="${id}"></span></a>`
const entry = (name: string, ids: readonly string[]): string =>
  `<li><span class="index-name">${name}</span> ${ids.map(link).join(' ')}</li>`
const NEXT = '<div style="break-before: page"></div>'
const BODY = `<h1 id="one">Valves</h1><p>K12 and K1-B are other names.</p>${NEXT}
<table><tr><td>Z1</td><td>K1</td><td>4</td></tr></table>${NEXT}
<h1 id="two">Wires</h1><p>None yet.</p><h2 id="three">More on K1</h2><p>VB<b>1</b> and K1</p>`

it('an index names the page of the row or line that holds a name, each page once', async () => {
  const index = `<ul class="index">${entry('K1', ['one', 'two', 'three'])}${entry('VB1', ['three'])}${entry('Z9', ['one'])}</ul>`
  const { bytes } = await printPdf(opened.browser, printJob(root, htmlPage(`${BODY}${NEXT}${index}`)))
  const { linkedFrom, destinations } = await readPdf(bytes, {
    linksTo: ['one', 'two', 'three', 'index-place-1', 'index-place-2']
  })
  const lines = new Set(linkedFrom.map(({ text }) => text.replace(/\s+/gu, ' ').trim()))
  // The row that names K1 is on the second page; nothing below "Wires" does, so that its heading counts, on the page of the next one.
  expect([...lines]).toEqual(['K1 2 3', 'VB1 3', 'Z9 1'])
  expect(destinations.get('index-place-1')).toBe(2)
})
