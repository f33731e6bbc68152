import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument, degrees } from 'pdf-lib'
import { expect, it } from 'vitest'
import { attachmentFaults, readAttachments } from '../../src/build/attachments.ts'
import type { Site } from '../../src/model/site.ts'

it('a page that its file turns is as wide as it is seen', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-attached-'))
  const file = 'scan.pdf'
  const scan = await PDFDocument.create()
  for (const turn of [0, 90, 180, 270]) scan.addPage([500, 300]).setRotation(degrees(turn))
  writeFileSync(join(folder, file), await scan.save())
  const closeout = { recordDrawings: [{ file }], tests: [], training: [], signOffs: [] }
  const found = await readAttachments({ closeout } as unknown as Site, { id: 'scan', folder, others: [file] } as never)
  expect(found.get(file)?.pages.map(({ wide }) => wide)).toEqual([true, false, true, false])
  rmSync(folder, { recursive: true })
})

it('a file of which the name alone is a PDF\u2019s or a picture\u2019s is told of, one with some bytes before its mark is not', () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-attached-'))
  const files = {
    'whole.pdf': '%PDF-1.4\n',
    'by-mail.pdf': `${'x'.repeat(900)}%PDF-1.4\n`,
    'page.pdf': '<!doctype html><title>Signed in</title>',
    'empty.pdf': '',
    'scan.jpg': '%PDF-1.4\n',
    'scan.png': '\u0089PNG\r\n\u001a\n'
  }
  for (const [file, head] of Object.entries(files)) writeFileSync(join(folder, file), head, 'latin1')
  const tests = Object.keys(files).map(file => ({ file, at: { file: 'site.md', path: [] } }))
  const closeout = { recordDrawings: [], tests, training: [], signOffs: [] }
  const sources = { id: 'scan', folder, others: Object.keys(files) }
  const told = attachmentFaults({ locate: () => ({}) } as never, { closeout } as unknown as Site, sources as never)
  expect(told.map(({ code, subject }) => [code, subject])).toEqual(
    ['page.pdf', 'empty.pdf', 'scan.jpg'].map(file => ['closeout/attachment-not-readable', file])
  )
  rmSync(folder, { recursive: true })
})
